#include "cli/stock_command.h"

#include "cli/choices.h"
#include "cli/talk.h"
#include "cli/tube_files.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/stock.h"
#include "benchleaf/report/text.h"

#include <CLI/CLI.hpp>

#include <cstdint>
#include <fstream>
#include <map>
#include <memory>
#include <sstream>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

Result<std::string> WholeFile(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  if (in.peek() != std::ifstream::traits_type::eof()) text << in.rdbuf();
  if (!in.is_open() || in.bad() || text.fail()) {
    return Fail(ErrorCode::kMissing, "this table of tubes cannot be read", path);
  }
  return text.str();
}

Result<StockList> LoadList(const StockOptions& options, const TubeTable& tubes) {
  const auto words = StockWords::Load(TablesNamed("stock-words.tsv", options.places));
  if (!words) return tl::unexpected<Error>(words.error());
  const auto text = WholeFile(options.file);
  if (!text) return tl::unexpected<Error>(text.error());
  return ParseStock(*text, options.file, *words, tubes);
}

// The tubes of every set, by its name.
Result<std::vector<SetNeed>> Needs(IndexReader& index) {
  std::map<std::string, std::vector<SeenTube>> seen;
  const auto read = index.ForEachManual(
      [&](const ManualRecord& manual) {
        std::vector<SeenTube>& of_set = seen[manual.set];
        for (SeenTube& tube : TubesSeen(manual)) of_set.push_back(std::move(tube));
        return true;
      },
      ManualParts::kTubes);
  if (!read) return tl::unexpected<Error>(read.error());
  std::vector<SetNeed> needs;
  for (const auto& [set, tubes] : seen) needs.push_back({set, SocketsOf(tubes)});
  return needs;
}

void TalkOf(const StockList& list, const Streams& streams) {
  for (const Error& fault : list.faults) Say(streams, fault.ToString());
  if (!list.unused.empty()) {
    std::string titles;
    for (const std::string& title : list.unused) titles += (titles.empty() ? "" : ", ") + title;
    Say(streams, "columns that nothing is taken from: " + titles);
  }
  if (!list.condition_stated) {
    Say(streams, "no column is named condition or tester: every tube is taken for good");
  }
}

std::string Summary(const StockReport& report) {
  std::int64_t served = 0;
  std::int64_t sets = 0;
  for (const SetAnswer& set : report.answer.sets) {
    if (!report.set.empty() && set.set != report.set) continue;
    ++sets;
    if (set.verdict == SetVerdict::kServed || set.verdict == SetVerdict::kWithStandIns) ++served;
  }
  return Json::Object({{"type", "summary"},
                       {"command", "stock"},
                       {"sets", sets},
                       {"served", served},
                       {"rows", static_cast<std::int64_t>(report.list.rows.size())},
                       {"rows_left_out", static_cast<std::int64_t>(report.list.faults.size())},
                       {"condition_stated", report.list.condition_stated}})
             .Dump() +
         "\n";
}

}  // namespace

void SetUpStock(CLI::App& app, Job& job) {
  auto options = std::make_shared<StockOptions>();
  CLI::App* command =
      app.add_subcommand("stock", "Tell which sets your tubes on hand serve, what lacks, and what no set needs");
  command->add_option("FILE", options->file, "Your tubes (CSV; the first line names the columns)")->required();
  command->add_option("--in", options->set, "Answer for this set, tube by tube")->type_name("SET");
  CLI::Option* json = command->add_flag("--json", options->json, "One JSON object a line");
  command->add_flag("--csv", options->csv, "Comma-separated values (RFC 4180), a record a tube of a set")
      ->excludes(json);
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Columns, in any order: type, count, glass (the marking on it, which wins), box, condition, tester, place.\n"
      "Used and untested tubes count only where a tester found them good.\n"
      "Example:\n"
      "  benchleaf stock tubes.csv\n"
      "  benchleaf stock tubes.csv --in \"Quillhaven 12\"\n"
      "Your own words for columns and conditions: stock-words.tsv in the library's folder.");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunStock(*options, s); }; });
}

ExitCode RunStock(const StockOptions& options, const Streams& streams) {
  const auto tubes = LoadTubes(options.places);
  if (!tubes) return Stop(streams, tubes.error());
  const auto list = LoadList(options, *tubes);
  if (!list) return Stop(streams, list.error());
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  std::string set;
  if (!options.set.empty()) {
    auto chosen = ChooseSet(**index, options.set, streams);
    if (!chosen) return chosen.error();
    set = std::move(*chosen);
  }
  TalkOf(*list, streams);
  const auto needs = Needs(**index);
  if (!needs) return Stop(streams, needs.error());
  const StockAnswer answer = ServeSets(*list, *needs, *tubes);
  const StockReport report{*list, answer, *tubes, set};
  if (options.csv) {
    WriteCsv(streams, StockCsv(report));
  } else if (options.json) {
    streams.out << StockJson(report) << Summary(report);
  } else {
    streams.out << StockText(report, LookOfOut(streams));
  }
  return list->faults.empty() ? ExitCode::kOk : ExitCode::kPartly;
}

}  // namespace benchleaf
