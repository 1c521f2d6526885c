#include "report/lineup_words.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/csv.h"
#include "benchleaf/report/lineup.h"
#include "benchleaf/report/text.h"

#include <algorithm>
#include <cstdint>

namespace benchleaf {
namespace {

// "3: V3, V4, V5"; empty for no tubes.
std::string CountedTubes(const ManualLineup& lineup, const std::vector<std::size_t>& which) {
  return which.empty() ? std::string() : std::to_string(which.size()) + ": " + TubeWords(lineup.tubes, which);
}

// "V3 6CB6A, V4 6CB6".
std::string TypedTubes(const ManualLineup& lineup, const std::vector<std::size_t>& which) {
  std::string words;
  for (const std::size_t i : which) {
    const TubeSocket& socket = lineup.tubes[i].socket;
    words += (words.empty() ? "" : ", ") + (socket.designator.empty() ? "" : socket.designator + " ") + socket.type;
  }
  return words;
}

std::vector<std::string> Types(const ManualLineup& lineup, const std::vector<std::size_t>& which) {
  std::vector<std::string> types;
  types.reserve(which.size());
  for (const std::size_t i : which) types.push_back(lineup.tubes[i].socket.type);
  std::sort(types.begin(), types.end());
  types.erase(std::unique(types.begin(), types.end()), types.end());
  return types;
}

// Heaters not alike are the first thing that keeps tubes from being exchanged.
std::string HeatersDiffer(const ManualLineup& first, const ManualLineup& second) {
  const HeaterWiring a = first.heaters.wiring;
  const HeaterWiring b = second.heaters.wiring;
  const std::string words = std::string("heaters: ") + std::string(Name(a)) + " and " + std::string(Name(b));
  if (a == b) return words + "\n";
  return words + ": look at a heater's supply before you move a tube from one to the other\n";
}

Json Designators(const ManualLineup& lineup, const std::vector<std::size_t>& which) {
  Json names = Json::Array();
  for (const std::size_t i : which) names.Add(lineup.tubes[i].socket.designator);
  return names;
}

void SetSides(Json& object, const ManualLineup& first, const ManualLineup& second,
              const std::vector<std::size_t>& first_tubes, const std::vector<std::size_t>& second_tubes) {
  object.Set("first_set", first.set);
  object.Set("first_manual", first.manual);
  object.Set("first_count", static_cast<std::int64_t>(first_tubes.size()));
  object.Set("first_tubes", Designators(first, first_tubes));
  object.Set("second_set", second.set);
  object.Set("second_manual", second.manual);
  object.Set("second_count", static_cast<std::int64_t>(second_tubes.size()));
  object.Set("second_tubes", Designators(second, second_tubes));
}

}  // namespace

std::string ComparisonText(const ManualLineup& first, const ManualLineup& second, const LineupComparison& comparison,
                           const Look& look) {
  std::string text = CleanText(SetWords(first)) + " (first) and " + CleanText(SetWords(second)) +
                     " (second): " + Counted(first.tubes.size(), "tube") + " and " +
                     Counted(second.tubes.size(), "tube") + "\n";
  for (const ManualLineup* side : {&first, &second}) {
    for (const Error& failure : side->failures) text += "not read: " + CleanText(failure.ToString()) + "\n";
  }
  Table types({{"types"},
               {"first"},
               {"tubes", Column::Align::kLeft, Column::Fit::kWrap},
               {"second"},
               {"tubes", Column::Align::kLeft, Column::Fit::kWrap}});
  for (const ComparedTypes& row : comparison.types) {
    types.Add({std::string(Name(row.relation)), row.first_type, CountedTubes(first, row.first), row.second_type,
               CountedTubes(second, row.second)});
  }
  text += types.Render(look);
  if (!comparison.functions.empty()) {
    Table functions({{"function", Column::Align::kLeft, Column::Fit::kWrap},
                     {"first", Column::Align::kLeft, Column::Fit::kWrap},
                     {"second", Column::Align::kLeft, Column::Fit::kWrap},
                     {"types"}});
    for (const ComparedFunction& row : comparison.functions) {
      functions.Add({row.function, TypedTubes(first, row.first), TypedTubes(second, row.second),
                     Types(first, row.first) == Types(second, row.second) ? "same" : "different"});
    }
    text += "\n" + functions.Render(look);
  }
  return text + HeatersDiffer(first, second);
}

std::string ComparisonCsv(const ManualLineup& first, const ManualLineup& second, const LineupComparison& comparison,
                          WithHeader with_header) {
  std::string csv = with_header == WithHeader::kYes
                        ? CsvRecord({"relation", "first_set", "first_manual", "first_type", "first_tubes", "second_set",
                                     "second_manual", "second_type", "second_tubes"})
                        : std::string();
  for (const ComparedTypes& row : comparison.types) {
    csv += CsvRecord({std::string(Name(row.relation)), first.set, first.manual, row.first_type,
                      TubeWords(first.tubes, row.first), second.set, second.manual, row.second_type,
                      TubeWords(second.tubes, row.second)});
  }
  return csv;
}

std::string ComparisonJson(const ManualLineup& first, const ManualLineup& second, const LineupComparison& comparison) {
  std::string lines;
  for (const ComparedTypes& row : comparison.types) {
    Json object = Json::Object({{"type", "compared-type"},
                                {"relation", std::string(Name(row.relation))},
                                {"first_type", row.first_type},
                                {"second_type", row.second_type}});
    SetSides(object, first, second, row.first, row.second);
    lines += object.Dump() + "\n";
  }
  for (const ComparedFunction& row : comparison.functions) {
    Json object = Json::Object({{"type", "compared-function"}, {"function", row.function}});
    SetSides(object, first, second, row.first, row.second);
    lines += object.Dump() + "\n";
  }
  return lines;
}

}  // namespace benchleaf
