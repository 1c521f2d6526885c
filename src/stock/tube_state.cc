#include "stock/tube_state.h"

#include <algorithm>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace benchleaf::stock {
namespace {

bool Says(const std::vector<ConditionWord>& said, ConditionWord word) {
  return std::find(said.begin(), said.end(), word) != said.end();
}

std::pair<StockState, std::string> Judged(const StockRow& row, const StockWords& words) {
  const std::vector<ConditionWord> condition = words.Conditions(row.condition);
  const std::vector<ConditionWord> tester = words.Conditions(row.tester);
  if (Says(tester, ConditionWord::kBad)) return {StockState::kBad, "the tester says '" + row.tester + "'"};
  if (Says(condition, ConditionWord::kBad)) return {StockState::kBad, "its condition is '" + row.condition + "'"};
  const bool tester_good = Says(tester, ConditionWord::kGood) || Says(tester, ConditionWord::kTestedGood);
  const bool not_tested = Says(tester, ConditionWord::kUntested);
  if ((tester_good && !not_tested) || Says(condition, ConditionWord::kTestedGood)) return {StockState::kGood, ""};
  const bool unread = tester.empty() && !row.tester.empty();
  const std::string figure = unread ? "; the tester's '" + row.tester + "' does not say good" : "";
  if (Says(condition, ConditionWord::kUntested) || not_tested) return {StockState::kUnproven, "untested" + figure};
  if (Says(condition, ConditionWord::kUsed)) {
    return {StockState::kUnproven, "used, and not said to be tested good" + figure};
  }
  if (Says(condition, ConditionWord::kGood)) return {StockState::kGood, ""};
  if (row.condition.empty() && row.tester.empty()) return {StockState::kUnproven, "nothing is said of its condition"};
  return {StockState::kUnproven,
          "'" + (row.condition.empty() ? row.tester : row.condition) + "' does not say whether it is good"};
}

}  // namespace

void SetState(StockRow& row, const StockWords& words, bool condition_stated) {
  if (!condition_stated) {
    row.state = StockState::kNotStated;
    return;
  }
  std::tie(row.state, row.why) = Judged(row, words);
}

}  // namespace benchleaf::stock
