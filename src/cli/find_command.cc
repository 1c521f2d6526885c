#include "cli/find_command.h"

#include "cli/last_find.h"
#include "cli/narrowed_search.h"
#include "cli/talk.h"

#include "benchleaf/record/json.h"

#include <CLI/CLI.hpp>

#include <cstdint>
#include <memory>

namespace benchleaf {
namespace {

constexpr int kMostPlaces = 100000;

}  // namespace

void SetUpFind(CLI::App& app, Job& job) {
  auto options = std::make_shared<FindOptions>();
  CLI::App* command =
      app.add_subcommand("find", "Find where a designator, tube, part number, value, item number or word stands");
  command
      ->add_option("TERM", options->terms, "What to find; several terms are answered one by one; quote words of text")
      ->required();
  command->add_option("--in", options->set, "Only in this set")->type_name("SET");
  command->add_option("--kind", options->kind, "Only on pages of this kind, such as schematic or \"parts list\"")
      ->type_name("KIND");
  command->add_option("--limit", options->limit, "Places shown for each term")
      ->type_name("N")
      ->check(CLI::Range(1, kMostPlaces))
      ->capture_default_str();
  command->add_flag("--json", options->json, "One JSON object a line");
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf find C112 --in \"Quillhaven 12\"\n"
      "  benchleaf find \"horizontal hold\" --kind schematic\n"
      "  benchleaf find \"item 12\" --in \"Quillhaven 12\"");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunFind(*options, s); }; });
}

ExitCode RunFind(const FindOptions& options, const Streams& streams) {
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto narrowing = ChooseNarrowing(**index, options.set, options.kind, streams);
  if (!narrowing) return narrowing.error();

  std::int64_t places = 0;
  const std::string database = AbsoluteDatabase(options.places);
  for (const std::string& term : options.terms) {
    const auto found = Search(**index, term, *narrowing, options.limit);
    if (!found) return Stop(streams, found.error());
    places += static_cast<std::int64_t>(found->hits.size());
    if (!found->hits.empty()) {
      RememberFind(streams.state_folder,
                   {database, term, narrowing->set, options.kind, options.limit, AnswerDigest(*found)});
    }
    if (options.json) streams.out << HitsJson(*found);
    if (found->hits.empty()) {
      Say(streams, NothingFoundText(*found));
    } else if (!options.json) {
      streams.out << HitsText(*found, LookOfOut(streams));
    }
  }
  if (options.json) {
    streams.out << Json::Object({{"type", "summary"},
                                 {"command", "find"},
                                 {"terms", static_cast<std::int64_t>(options.terms.size())},
                                 {"places", places}})
                       .Dump()
                << '\n';
  }
  return places > 0 ? ExitCode::kOk : ExitCode::kNothingFound;
}

}  // namespace benchleaf
