#include "report/stock_words.h"

#include "report/heater_words.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf {

std::vector<const SetAnswer*> SetsOf(const StockReport& report) {
  std::vector<const SetAnswer*> sets;
  for (const SetAnswer& set : report.answer.sets) {
    if (report.set.empty() || set.set == report.set) sets.push_back(&set);
  }
  return sets;
}

std::string OnHandWords(const StockReport& report, const OnHand& on_hand, const std::string& wanted) {
  const StockRow& row = report.list.rows[on_hand.row];
  const StandIn& stand_in = on_hand.stand_in;
  std::string words = row.type + ", line " + std::to_string(row.line);
  std::string why = row.type == wanted ? "" : std::string(Name(stand_in.standing));
  const auto add = [&why](const std::string& more) { why += (why.empty() ? "" : "; ") + more; };
  const TubeEntry* entry = report.tubes.Find(row.type);
  const std::string heater = entry == nullptr ? "" : " (" + HeaterWords(*entry) + ")";
  if (stand_in.by_suffix) add("by its suffix alone");
  if (stand_in.standing == Standing::kOtherHeater) {
    why += heater;
    add("not interchangeable");
  } else if (stand_in.heater_differs) {
    add("its heater differs" + heater);
  }
  if (stand_in.standing == Standing::kEarlier) add("only where its ratings suffice");
  if (!row.why.empty()) add(row.why);
  return why.empty() ? words : words + ": " + why;
}

std::vector<std::string> UnknownTypes(const StockReport& report) {
  std::vector<std::string> types;
  for (std::size_t i = 0; i < report.list.rows.size(); ++i) {
    if (!report.answer.rows[i].known) types.push_back(report.list.rows[i].type);
  }
  std::sort(types.begin(), types.end());
  types.erase(std::unique(types.begin(), types.end()), types.end());
  return types;
}

std::vector<std::size_t> RowsThatNoSetNeeds(const StockReport& report) {
  std::vector<std::size_t> rows;
  for (std::size_t i = 0; i < report.answer.rows.size(); ++i) {
    if (report.answer.rows[i].wanted_by.empty()) rows.push_back(i);
  }
  return rows;
}

}  // namespace benchleaf
