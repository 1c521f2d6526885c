#include "cli/replace_command.h"

#include "cli/choices.h"
#include "cli/talk.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/gaps/find_gaps.h"
#include "benchleaf/orders/order.h"
#include "benchleaf/record/json.h"
#include "benchleaf/report/order.h"

#include <CLI/CLI.hpp>

#include <cstdint>
#include <memory>

namespace benchleaf {
namespace {

Result<std::vector<PartKind>> Kinds(const std::vector<std::string>& only) {
  if (only.empty()) return AgeingKinds();
  std::vector<PartKind> kinds;
  for (const std::string& name : only) {
    const auto kind = PartKindNamed(name);
    if (!kind || *kind == PartKind::kVariable) {
      return Fail(ErrorCode::kUsage, "no kind of part is called '" + name + "'; the kinds are: " + OrderableKinds());
    }
    kinds.push_back(*kind);
  }
  return kinds;
}

// Where the drawings of the set contradict its lists.
KnownDoubts DrawnOtherwise(const std::vector<ManualRecord>& manuals, const Rules& rules) {
  KnownDoubts doubts;
  for (const ManualRecord& manual : manuals) {
    for (const Gap& gap : FindGaps(manual, rules).gaps) {
      if (gap.kind == GapKind::kValue && gap.grade != GapGrade::kNote) doubts[gap.what].push_back(gap.reason);
    }
  }
  return doubts;
}

std::string Summary(const std::string& set, const Order& order) {
  std::int64_t parts = 0;
  for (const OrderItem& item : order.items) parts += item.count;
  Json cautions = Json::Array();
  for (const std::string& caution : order.cautions) cautions.Add(caution);
  Json left = Json::Object();
  for (const auto& [kind, rows] : order.left) left.Set(std::string(Name(kind)), rows);
  return Json::Object({{"type", "summary"},
                       {"command", "replace"},
                       {"set", set},
                       {"items", static_cast<std::int64_t>(order.items.size())},
                       {"parts", parts},
                       {"unread", static_cast<std::int64_t>(order.unread.size())},
                       {"left", std::move(left)},
                       {"cautions", std::move(cautions)}})
             .Dump() +
         "\n";
}

}  // namespace

void SetUpReplace(CLI::App& app, Job& job) {
  auto options = std::make_shared<ReplaceOptions>();
  CLI::App* command = app.add_subcommand("replace", "Tell what to order for a set: aged parts in values made today");
  command->add_option("SET", options->set, "The set's name, or words of it")->required();
  command
      ->add_option("--only", options->only,
                   "A kind of part, and no others (may be said again): " + OrderableKinds() +
                       " (default: electrolytic, paper, selenium)")
      ->type_name("KIND")
      ->allow_extra_args(false);
  CLI::Option* json = command->add_flag("--json", options->json, "One JSON object a line");
  command->add_flag("--csv", options->csv, "Comma-separated values (RFC 4180), a record an item")->excludes(json);
  AddIndexPlaceOptions(*command, options->places);
  command->footer(
      "Example:\n"
      "  benchleaf replace \"Quillhaven 12\" --csv > order.csv\n"
      "  benchleaf replace \"Quillhaven 12\" --only carbon\n"
      "Your own words for kinds: replace-words.tsv in the library's folder.");
  command->callback([options, &job] { job = [options](const Streams& s) { return RunReplace(*options, s); }; });
}

ExitCode RunReplace(const ReplaceOptions& options, const Streams& streams) {
  const auto kinds = Kinds(options.only);
  if (!kinds) return Stop(streams, kinds.error());
  const auto words = PartWords::Load(TablesNamed("replace-words.tsv", options.places));
  if (!words) return Stop(streams, words.error());
  const auto rules = LoadRules(options.places);
  if (!rules) return Stop(streams, rules.error());
  auto index = OpenIndex(options.places);
  if (!index) return Stop(streams, index.error());
  const auto set = ChooseSet(**index, options.set, streams);
  if (!set) return set.error();
  const auto parts = (*index)->Parts(*set);
  if (!parts) return Stop(streams, parts.error());
  const auto manuals = (*index)->Manuals(*set);
  if (!manuals) return Stop(streams, manuals.error());
  const Order order = MakeOrder(*parts, *kinds, *words, DrawnOtherwise(*manuals, **rules));
  const bool nothing = order.items.empty() && order.unread.empty();
  if (parts->empty()) {
    Say(streams, *set + ": no parts list was found among its pages; `benchleaf sets \"" + *set +
                     "\"` shows the kinds of its pages");
  } else if (nothing) {
    Say(streams, *set + ": no part of the kinds asked for is in its parts list; `benchleaf parts \"" + *set +
                     "\"` shows what was read");
  }
  if (options.csv) {
    WriteCsv(streams, OrderCsv(order));
    for (const std::string& caution : order.cautions) Say(streams, caution);
  } else if (options.json) {
    streams.out << OrderJson(*set, order) << Summary(*set, order);
  } else if (!nothing) {
    streams.out << OrderText(*set, order, LookOfOut(streams));
  }
  return nothing ? ExitCode::kNothingFound : ExitCode::kOk;
}

}  // namespace benchleaf
