#include "cli/gaps_command.h"

#include "cli/choices.h"
#include "cli/talk.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/gaps/find_gaps.h"
#include "benchleaf/record/json.h"
#include "benchleaf/report/gaps.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <utility>

namespace benchleaf {
namespace {

Result<std::vector<GapKind>> ChooseKinds(const std::vector<std::string>& names) {
  std::vector<GapKind> kinds;
  for (const std::string& name : names) {
    const auto kind = GapKindNamed(name);
    if (!kind)
      return Fail(ErrorCode::kUsage,
                  "no kind of finding is called '" + name + "'; the kinds are: " + ListOf(GapKinds()));
    kinds.push_back(*kind);
  }
  return kinds;
}

void Write(const GapsOptions& options, const std::vector<ManualGaps>& manuals, const Streams& streams) {
  bool first = true;
  for (const ManualGaps& gaps : manuals) {
    if (options.json) {
      streams.out << GapsJson(gaps);
    } else if (options.csv) {
      WriteCsv(streams, GapsCsv(gaps, first));
    } else {
      streams.out << (first ? "" : "\n") << GapsText(gaps, LookOfOut(streams));
    }
    first = false;
  }
}

}  // namespace

std::vector<std::string> GapKinds() {
  std::vector<std::string> names;
  for (int i = 0; i <= static_cast<int>(GapKind::kNumbering); ++i) names.emplace_back(Name(static_cast<GapKind>(i)));
  return names;
}

void SetUpGaps(CLI::App& app, Job& job) {
  auto options = std::make_shared<GapsOptions>();
  CLI::App* command =
      app.add_subcommand("gaps", "Tell what a set's manuals lack, and where list and drawing contradict each other");
  command->add_option("SET", options->set, "The set's name, or words of it")->required();
  command->add_option("--only", options->only, "Only findings of this kind (may be said again): " + ListOf(GapKinds()))
      ->type_name("KIND")
      ->allow_extra_args(false);
  CLI::Option* json = command->add_flag("--json", options->json, "One JSON object a line");
  command->add_flag("--csv", options->csv, "Comma-separated values (RFC 4180)")->excludes(json);
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf gaps \"Quillhaven 12\" --only value --only page\n"
      "`benchleaf picture --file FILE --page N --box X,Y,W,H` shows a finding; --json gives the boxes.");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunGaps(*options, s); }; });
}

ExitCode RunGaps(const GapsOptions& options, const Streams& streams) {
  const auto kinds = ChooseKinds(options.only);
  if (!kinds) return Stop(streams, kinds.error());
  const auto rules = LoadRules(options.places);
  if (!rules) return Stop(streams, rules.error());
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto set = ChooseSet(**index, options.set, streams);
  if (!set) return set.error();
  const auto manuals = (*index)->Manuals(*set);
  if (!manuals) return Stop(streams, manuals.error());

  std::vector<ManualGaps> found;
  std::size_t count = 0;
  for (const ManualRecord& manual : *manuals) {
    ManualGaps gaps = FindGaps(manual, **rules);
    if (!kinds->empty()) {
      std::erase_if(gaps.gaps,
                    [&](const Gap& gap) { return std::find(kinds->begin(), kinds->end(), gap.kind) == kinds->end(); });
    }
    count += gaps.gaps.size();
    found.push_back(std::move(gaps));
  }
  Write(options, found, streams);
  if (options.json) {
    streams.out << Json::Object({{"type", "summary"},
                                 {"command", "gaps"},
                                 {"set", *set},
                                 {"gaps", static_cast<std::int64_t>(count)}})
                       .Dump()
                << '\n';
  }
  return count == 0 ? ExitCode::kNothingFound : ExitCode::kOk;
}

}  // namespace benchleaf
