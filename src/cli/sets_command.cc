#include "cli/sets_command.h"

#include "cli/choices.h"
#include "cli/talk.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/sets.h"
#include "benchleaf/report/text.h"

#include <CLI/CLI.hpp>

#include <cstdint>
#include <memory>

namespace benchleaf {

void SetUpSets(CLI::App& app, Job& job) {
  auto options = std::make_shared<SetsOptions>();
  CLI::App* command = app.add_subcommand("sets", "List the sets in the index, or tell about one of them");
  command->add_option("SET", options->set, "A set's name, or words of it: its manuals and what could not be read");
  CLI::Option* json = command->add_flag("--json", options->json, "One JSON object a line");
  command->add_flag("--names", options->names, "Their names alone, one a line")->excludes(json);
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf sets\n"
      "  benchleaf sets \"Quillhaven 12\"");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunSets(*options, s); }; });
}

ExitCode RunSets(const SetsOptions& options, const Streams& streams) {
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  auto sets = (*index)->Sets();
  if (!sets) return Stop(streams, sets.error());
  if (!options.set.empty()) {
    const auto name = ChooseSet(**index, options.set, streams);
    if (!name) return name.error();
    std::erase_if(*sets, [&](const SetSummary& set) { return set.set != *name; });
  }
  if (sets->empty()) Say(streams, "the index holds no sets");
  if (options.json) {
    for (const SetSummary& set : *sets) streams.out << SetJson(set);
    streams.out << Json::Object(
                       {{"type", "summary"}, {"command", "sets"}, {"sets", static_cast<std::int64_t>(sets->size())}})
                       .Dump()
                << '\n';
  } else if (options.names) {
    for (const SetSummary& set : *sets) streams.out << CleanText(set.set) << '\n';
  } else if (options.set.empty()) {
    streams.out << SetsText(*sets, LookOfOut(streams));
  } else {
    for (const SetSummary& set : *sets) streams.out << SetDetailText(set, LookOfOut(streams));
  }
  return sets->empty() ? ExitCode::kNothingFound : ExitCode::kOk;
}

}  // namespace benchleaf
