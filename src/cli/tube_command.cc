#include "cli/tube_command.h"

#include "cli/talk.h"
#include "cli/tube_files.h"

#include "benchleaf/lineup/designator_beside.h"
#include "benchleaf/record/json.h"
#include "benchleaf/report/tube_knowledge.h"
#include "benchleaf/report/tubes.h"

#include <CLI/CLI.hpp>

#include <algorithm>
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
    places.push_back({std::move(sighting), std::move(designator), ""});
  }
  return places;
}

bool IsIn(const std::vector<TubePlace>& places, const FoundSighting& found) {
  return std::any_of(places.begin(), places.end(), [&](const TubePlace& place) {
    return place.found.place.file == found.place.file && place.found.place.page == found.place.page &&
           place.found.sighting == found.sighting;
  });
}

// Every place of the type, then those of the other names of the same tube that are not among them, by set.
Result<std::vector<TubePlace>> Places(IndexReader& index, const std::string& type,
                                      const std::vector<std::string>& other_names) {
  auto found = index.Tube(type);
  if (!found) return tl::unexpected<Error>(found.error());
  auto places = WithDesignators(index, std::move(*found));
  for (const std::string& name : other_names) {
    if (!places) return places;
    auto more = index.Tube(name);
    if (!more) return tl::unexpected<Error>(more.error());
    std::erase_if(*more, [&](const FoundSighting& one) { return IsIn(*places, one); });
    auto beside = WithDesignators(index, std::move(*more));
    if (!beside) return beside;
    for (TubePlace& place : *beside) {
      place.other_name = name;
      places->push_back(std::move(place));
    }
  }
  std::stable_sort(places->begin(), places->end(),
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
