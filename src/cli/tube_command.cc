#include "cli/tube_command.h"

#include "cli/talk.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/tubes.h"

#include <CLI/CLI.hpp>

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

Result<std::vector<TubePlace>> WithDesignators(IndexReader& index, std::vector<FoundSighting> found) {
  std::map<std::pair<std::string, int>, std::optional<PageRecord>> pages;
  std::vector<TubePlace> places;
  for (FoundSighting& sighting : found) {
    const auto [page, is_new] = pages.try_emplace({sighting.place.file, sighting.place.page});
    if (is_new) {
      auto record = index.Page(sighting.place.file, sighting.place.page);
      if (!record) return tl::unexpected(record.error());
      page->second = std::move(*record);
    }
    std::string designator = page->second ? DesignatorBeside(*page->second, sighting.sighting) : std::string();
    places.push_back({std::move(sighting), std::move(designator)});
  }
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
  CLI::App* command = app.add_subcommand("tube", "Find every set that uses a tube type, in any of its forms");
  command->add_option("TYPE", options->type, "The tube type: 6CB6 also finds 6CB6A")->required();
  command->add_flag("--json", options->json, "One JSON object a line");
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf tube 6CB6");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunTube(*options, s); }; });
}

ExitCode RunTube(const TubeOptions& options, const Streams& streams) {
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  auto found = (*index)->Tube(options.type);
  if (!found) return Stop(streams, found.error());
  const auto places = WithDesignators(**index, std::move(*found));
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
    streams.out << TubesText(options.type, *places, LookOfOut(streams));
  }
  return places->empty() ? ExitCode::kNothingFound : ExitCode::kOk;
}

}  // namespace benchleaf
