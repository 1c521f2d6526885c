#include "benchleaf/report/sets.h"

#include "report/place.h"

#include "benchleaf/report/text.h"

#include <cstddef>

namespace benchleaf {
namespace {

// What counts of several manuals add up to.
struct Totals {
  int volumes = 0;
  int pages = 0;
  int failed = 0;
  int entries = 0;
  int linked = 0;
};

Totals Sum(const SetSummary& set) {
  Totals totals;
  for (const SetSummary::ManualSummary& manual : set.manuals) {
    totals.volumes += manual.volumes;
    totals.pages += manual.pages;
    totals.failed += manual.failed;
    totals.entries += manual.entries;
    totals.linked += manual.linked_entries;
  }
  return totals;
}

std::string Share(int part, int whole) {
  return whole == 0 ? std::string("-") : Sureness(static_cast<double>(part) / whole);
}

Cell FailedCell(int failed) { return {std::to_string(failed), failed > 0 ? Paint::kWarning : Paint::kPlain}; }

constexpr Column::Align kRight = Column::Align::kRight;
constexpr Column::Align kLeft = Column::Align::kLeft;

}  // namespace

std::string SetsText(const std::vector<SetSummary>& sets, const Look& look) {
  Table table({{"set", kLeft, Column::Fit::kWrap},
               {"manuals", kRight},
               {"volumes", kRight},
               {"pages", kRight},
               {"not read", kRight},
               {"parts", kRight},
               {"drawn", kRight}});
  for (const SetSummary& set : sets) {
    const Totals totals = Sum(set);
    table.Add({set.set, std::to_string(set.manuals.size()), std::to_string(totals.volumes),
               std::to_string(totals.pages), FailedCell(totals.failed), std::to_string(totals.entries),
               Share(totals.linked, totals.entries)});
  }
  return table.Render(look);
}

std::string SetDetailText(const SetSummary& set, const Look& look) {
  std::string text = Painted(CleanText(set.set), Paint::kStrong, look) + "\n";
  if (!set.maker.empty()) text += "maker: " + CleanText(set.maker) + "\n";
  if (!set.model.empty()) text += "model: " + CleanText(set.model) + "\n";
  for (const SetSummary::ManualSummary& manual : set.manuals) {
    text += "\nmanual: " + CleanText(manual.manual);
    if (!manual.title.empty() && manual.title != manual.manual) text += ", " + CleanText(manual.title);
    text += '\n';
    text += Counted(static_cast<std::size_t>(manual.volumes), "volume") + ", " +
            Counted(static_cast<std::size_t>(manual.pages), "page") + ", " + std::to_string(manual.failed) +
            " not read; " + Counted(static_cast<std::size_t>(manual.entries), "part") + " listed, " +
            std::to_string(manual.linked_entries) + " of them seen on a drawing\n";
    Table kinds({{"kind"}, {"pages", kRight}});
    for (const auto& [kind, pages] : manual.kinds) {
      if (pages > 0) kinds.Add({std::string(Name(kind)), std::to_string(pages)});
    }
    text += kinds.Render(look);
    Table failures({{"not read", kLeft, Column::Fit::kWrap}, {"page", kRight}, {"why", kLeft, Column::Fit::kWrap}});
    for (const Error& failure : manual.failures) {
      failures.Add({failure.source, failure.page > 0 ? std::to_string(failure.page) : "all", failure.message});
    }
    text += failures.Render(look);
  }
  return text;
}

std::string SetJson(const SetSummary& set) {
  Json manuals = Json::Array();
  for (const SetSummary::ManualSummary& manual : set.manuals) {
    Json kinds = Json::Object();
    for (const auto& [kind, pages] : manual.kinds) kinds.Set(std::string(Name(kind)), pages);
    Json failures = Json::Array();
    for (const Error& failure : manual.failures) {
      failures.Add(Json::Object({{"file", failure.source},
                                 {"page", failure.page},
                                 {"code", std::string(Name(failure.code))},
                                 {"reason", failure.message}}));
    }
    manuals.Add(Json::Object({{"manual", manual.manual},
                              {"title", manual.title},
                              {"volumes", manual.volumes},
                              {"pages", manual.pages},
                              {"failed", manual.failed},
                              {"entries", manual.entries},
                              {"linked_entries", manual.linked_entries},
                              {"kinds", kinds},
                              {"failures", failures}}));
  }
  return Json::Object(
             {{"type", "set"}, {"set", set.set}, {"maker", set.maker}, {"model", set.model}, {"manuals", manuals}})
             .Dump() +
         "\n";
}

}  // namespace benchleaf
