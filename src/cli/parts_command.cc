#include "cli/parts_command.h"

#include "cli/choices.h"
#include "cli/talk.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/parts.h"

#include <CLI/CLI.hpp>

#include <cstdint>
#include <memory>

namespace benchleaf {

void SetUpParts(CLI::App& app, Job& job) {
  auto options = std::make_shared<PartsOptions>();
  CLI::App* command = app.add_subcommand("parts", "List a set's parts and where each is drawn");
  command->add_option("SET", options->set, "The set's name, or words of it")->required();
  CLI::Option* json = command->add_flag("--json", options->json, "One JSON object a line");
  command->add_flag("--csv", options->csv, "Comma-separated values (RFC 4180)")->excludes(json);
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf parts \"Quillhaven 12\" --csv > parts.csv");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunParts(*options, s); }; });
}

ExitCode RunParts(const PartsOptions& options, const Streams& streams) {
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto set = ChooseSet(**index, options.set, streams);
  if (!set) return set.error();
  const auto entries = (*index)->Parts(*set);
  if (!entries) return Stop(streams, entries.error());
  if (entries->empty()) {
    Say(streams, *set + ": no parts list was found among its pages; `benchleaf sets \"" + *set +
                     "\"` shows the kinds of its pages");
  }
  if (options.csv) {
    WriteCsv(streams, PartsCsv(*entries));
  } else if (options.json) {
    streams.out << PartsJson(*entries)
                << Json::Object({{"type", "summary"},
                                 {"command", "parts"},
                                 {"set", *set},
                                 {"parts", static_cast<std::int64_t>(entries->size())}})
                       .Dump()
                << '\n';
  } else {
    streams.out << PartsText(*set, *entries, LookOfOut(streams));
  }
  return entries->empty() ? ExitCode::kNothingFound : ExitCode::kOk;
}

}  // namespace benchleaf
