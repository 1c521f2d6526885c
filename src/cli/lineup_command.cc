#include "cli/lineup_command.h"

#include "cli/choices.h"
#include "cli/talk.h"
#include "cli/tube_files.h"

#include "benchleaf/lineup/compare.h"
#include "benchleaf/record/json.h"
#include "benchleaf/report/lineup.h"

#include <CLI/CLI.hpp>

#include <cstddef>
#include <cstdint>
#include <memory>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

using Lineups = std::vector<ManualLineup>;

// The lineups of the set's manuals, those without a tube left out with a word.
tl::expected<Lineups, ExitCode> LineupsOf(IndexReader& index, const std::string& text, const TubeTable& table,
                                          const TubeFunctions& functions, const Streams& streams) {
  const auto set = ChooseSet(index, text, streams);
  if (!set) return tl::unexpected(set.error());
  const auto manuals = index.Manuals(*set);
  if (!manuals) return tl::unexpected(Stop(streams, manuals.error()));
  Lineups lineups;
  for (const ManualRecord& manual : *manuals) {
    ManualLineup lineup = LineUp(manual, table, functions);
    if (lineup.tubes.empty() && lineup.unplaced.empty()) {
      Say(streams, *set + ", " + manual.manual + ": no tube was found on " + std::to_string(lineup.pages) +
                       " pages read, " + std::to_string(lineup.failures.size()) + " not read; `benchleaf sets \"" +
                       *set + "\"` shows the kinds of its pages");
    } else {
      lineups.push_back(std::move(lineup));
    }
  }
  return lineups;
}

void WriteSummary(const LineupOptions& options, std::size_t manuals, std::size_t tubes, const Streams& streams) {
  if (!options.json) return;
  streams.out << Json::Object({{"type", "summary"},
                               {"command", "lineup"},
                               {"manuals", static_cast<std::int64_t>(manuals)},
                               {"tubes", static_cast<std::int64_t>(tubes)}})
                     .Dump()
              << '\n';
}

void WriteLineups(const LineupOptions& options, const Lineups& lineups, const Streams& streams) {
  bool first = true;
  std::size_t tubes = 0;
  for (const ManualLineup& lineup : lineups) {
    if (options.json) {
      streams.out << LineupJson(lineup);
    } else if (options.csv) {
      WriteCsv(streams, LineupCsv(lineup, first ? WithHeader::kYes : WithHeader::kNo));
    } else {
      streams.out << (first ? "" : "\n") << LineupText(lineup, LookOfOut(streams));
    }
    tubes += lineup.tubes.size();
    first = false;
  }
  WriteSummary(options, lineups.size(), tubes, streams);
}

// Every manual of the one set beside every manual of the other: they stay apart.
void WriteComparisons(const LineupOptions& options, const Lineups& firsts, const Lineups& seconds,
                      const Streams& streams) {
  bool is_first = true;
  std::size_t tubes = 0;
  for (const ManualLineup& first : firsts) {
    for (const ManualLineup& second : seconds) {
      const LineupComparison comparison = Compare(first, second);
      if (options.json) {
        streams.out << ComparisonJson(first, second, comparison);
      } else if (options.csv) {
        WriteCsv(streams, ComparisonCsv(first, second, comparison, is_first ? WithHeader::kYes : WithHeader::kNo));
      } else {
        streams.out << (is_first ? "" : "\n") << ComparisonText(first, second, comparison, LookOfOut(streams));
      }
      tubes += first.tubes.size() + second.tubes.size();
      is_first = false;
    }
  }
  WriteSummary(options, firsts.size() + seconds.size(), tubes, streams);
}

}  // namespace

void SetUpLineup(CLI::App& app, Job& job) {
  auto options = std::make_shared<LineupOptions>();
  CLI::App* command = app.add_subcommand("lineup", "List a set's tubes and their heaters, or compare two sets' tubes");
  command->add_option("SET", options->set, "The set's name, or words of it")->required();
  command->add_option("OTHER", options->other, "Another set, to stand beside it");
  CLI::Option* json = command->add_flag("--json", options->json, "One JSON object a line");
  command->add_flag("--csv", options->csv, "Comma-separated values (RFC 4180)")->excludes(json);
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf lineup \"Quillhaven 12\"\n"
      "  benchleaf lineup \"Quillhaven 12\" \"Brackenford T7\"\n"
      "Your own words for functions: tube-functions.tsv in the library's folder, in the form of benchleaf's.");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunLineup(*options, s); }; });
}

ExitCode RunLineup(const LineupOptions& options, const Streams& streams) {
  const auto table = LoadTubes(options.places);
  if (!table) return Stop(streams, table.error());
  const auto functions = LoadTubeFunctions(options.places);
  if (!functions) return Stop(streams, functions.error());
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto firsts = LineupsOf(**index, options.set, *table, *functions, streams);
  if (!firsts) return firsts.error();
  if (options.other.empty()) {
    WriteLineups(options, *firsts, streams);
    return firsts->empty() ? ExitCode::kNothingFound : ExitCode::kOk;
  }
  const auto seconds = LineupsOf(**index, options.other, *table, *functions, streams);
  if (!seconds) return seconds.error();
  WriteComparisons(options, *firsts, *seconds, streams);
  return firsts->empty() || seconds->empty() ? ExitCode::kNothingFound : ExitCode::kOk;
}

}  // namespace benchleaf
