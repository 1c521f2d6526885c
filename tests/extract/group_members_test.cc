#include "extract/group_members.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf::extract {
namespace {

// The rows' designators after their groups were settled; "|" between rows.
std::string Settled(const std::vector<std::string>& cells) {
  std::vector<ListRow> rows;
  for (const std::string& cell : cells) {
    ListRow row;
    row.designators = *ExpandDesignators(cell, ShippedRules().tables(), RangeStyle::kList);
    rows.push_back(row);
  }
  SettleGroups(rows);
  std::string text;
  for (const ListRow& row : rows) {
    text += text.empty() ? "" : " |";
    for (const Designator& designator : row.designators) {
      text += (text.empty() ? "" : " ") + designator.Text();
    }
  }
  return text;
}

TEST(SettleGroups, LeavesWhatIsInOrder) {
  EXPECT_EQ(Settled({"C1,6,9", "C2-4", "C5"}), "C1 C6 C9 | C2 C3 C4 | C5");
  EXPECT_EQ(Settled({"C1A,B", "C2"}), "C1A C1B | C2") << "sections of one part";
}

TEST(SettleGroups, TakesARangeWhosePartsHaveRowsOfTheirOwnForALostComma) {
  EXPECT_EQ(Settled({"C10-21", "C11", "C12,15", "C13"}), "C10 C21 | C11 | C12 C15 | C13");
}

TEST(SettleGroups, DropsNumbersThatDoNotRise) {
  EXPECT_EQ(Settled({"C9,36,422,43", "C10"}), "C9 C36 C43 | C10");
  EXPECT_EQ(Settled({"R16,70,1,2", "R17", "R60"}), "R16 R70 | R17 | R60") << "half a watt behind the numbers";
}

TEST(SettleGroups, ListsNoPartTwice) { EXPECT_EQ(Settled({"C3,5,8", "C4", "C5"}), "C3 C8 | C4 | C5"); }

TEST(SettleGroups, IsLessSureWhereItDroppedSomething) {
  std::vector<ListRow> rows(2);
  rows[0].designators = *ExpandDesignators("C1,2,3", ShippedRules().tables(), RangeStyle::kList);
  rows[1].designators = *ExpandDesignators("C11,19,12", ShippedRules().tables(), RangeStyle::kList);
  rows[0].designator_confidence = rows[1].designator_confidence = 0.1;
  SettleGroups(rows);
  EXPECT_GT(rows[0].designator_confidence, rows[1].designator_confidence);
}

}  // namespace
}  // namespace benchleaf::extract
