#include "cli/tube_command.h"

#include "cli/talk.h"
#include "cli/tube_files.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/tube_knowledge.h"
#include "benchleaf/report/tubes.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstdint>
#include <map>
#include <memory>
#include <set>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// What stands on the pages already named, by file and page.
using SeenOnPages = std::multimap<std::pair<std::string_view, int>, const Sighting*>;

SeenOnPages SeenAt(const std::vector<TubePlace>& places) {
  SeenOnPages seen;
  for (const TubePlace& place : places) {
    seen.emplace(std::pair(std::string_view(place.found.place.file), place.found.place.page), &place.found.sighting);
  }
  return seen;
}

bool IsAmong(const SeenOnPages& seen, const FoundSighting& found) {
  const auto [first, last] = seen.equal_range({found.place.file, found.place.page});
  return std::any_of(first, last, [&](const auto& one) { return *one.second == found.sighting; });
}

// Every place of the type, then those of the other names of the same tube that are not among them, by set.
Result<std::vector<TubePlace>> Places(IndexReader& index, const std::string& type,
                                      const std::vector<std::string>& other_names) {
  auto found = index.Tube(type);
  if (!found) return tl::unexpected<Error>(found.error());
  std::vector<TubePlace> places;
  for (FoundTube& tube : *found) places.push_back({std::move(tube.found), std::move(tube.designator), ""});
  for (const std::string& name : other_names) {
    auto more = index.Tube(name);
    if (!more) return tl::unexpected<Error>(more.error());
    const SeenOnPages seen = SeenAt(places);
    std::erase_if(*more, [&](const FoundTube& tube) { return IsAmong(seen, tube.found); });
    for (FoundTube& tube : *more) places.push_back({std::move(tube.found), std::move(tube.designator), name});
  }
  std::stable_sort(places.begin(), places.end(),
                   [](const TubePlace& a, const TubePlace& b) { return a.found.place.set < b.found.place.set; });
  return places;
}

std::string Summary(const std::vector<TubePlace>& places) {
  std::set<std::string> sets;
  for (const TubePlace& place : places) sets.insert(place.found.place.set);
  return Json::Object({{"type", "summary"},
                       {"command", "tube"},
                       {"sets", static_cast<std::int64_t>(sets.size())},
                       {"places", static_cast<std::int64_t>(places.size())}})
             .Dump() +
         "\n";
}

}  // namespace

void SetUpTube(CLI::App& app, Job& job) {
  auto options = std::make_shared<TubeOptions>();
  CLI::App* command = app.add_subcommand(
      "tube", "Tell what a tube type is, and find every set that uses it, in any of its forms or names");
  command->add_option("TYPE", options->type, "The tube type: 6CB6 also finds 6CB6A, 12AX7 also ECC83")->required();
  command->add_flag("--json", options->json, "One JSON object a line");
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf tube 6CB6\n"
      "Your own rows: tubes.tsv in the library's folder, in the form of benchleaf's tubes.tsv.");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunTube(*options, s); }; });
}

ExitCode RunTube(const TubeOptions& options, const Streams& streams) {
  const auto table = LoadTubes(options.places);
  if (!table) return Stop(streams, table.error());
  const std::vector<TubeKnowledge> known = KnowTube(options.type, *table);
  // Said before the index is opened: it holds without one.
  if (options.json) {
    streams.out << KnowledgeJson(known);
  } else {
    streams.out << KnowledgeText(known, *table, LookOfOut(streams));
  }

  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto places = Places(**index, options.type, OtherNames(known));
  if (!places) return Stop(streams, places.error());
  if (places->empty()) {
    const auto near = (*index)->Suggest(options.type);
    if (!near) return Stop(streams, near.error());
    std::string message = options.type + ": no set is known to use it";
    for (std::size_t i = 0; i < near->size(); ++i) {
      message += (i == 0 ? "; near to it in the index: " : ", ") + (*near)[i];
    }
    Say(streams, message);
  }
  if (options.json) {
    streams.out << TubesJson(options.type, *places) << Summary(*places);
  } else if (!places->empty()) {
    streams.out << "\n" << TubesText(options.type, *places, LookOfOut(streams));
  }
  return places->empty() ? ExitCode::kNothingFound : ExitCode::kOk;
}

}  // namespace benchleaf
