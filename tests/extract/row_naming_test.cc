#include "extract/row_naming.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf::extract {
namespace {

const Rules::Tables& Tables() { return ShippedRules().tables(); }

// Rows as they were read: a designator cell that is good, or a text that is not ("?" in front).
std::string Repaired(const std::vector<std::string>& cells) {
  std::vector<ListRow> rows;
  for (const std::string& cell : cells) {
    ListRow row;
    row.designator_text = cell[0] == '?' ? cell.substr(1) : cell;
    if (cell[0] != '?') {
      row.designators = *ExpandDesignators(cell, Tables(), RangeStyle::kList);
    }
    rows.push_back(row);
  }
  NameRows(rows, Tables());
  std::string text;
  for (const ListRow& row : rows) {
    text += text.empty() ? "" : " ";
    text += row.designators.empty() ? "?" : row.designators.front().Text();
  }
  return text;
}

TEST(NameRows, FillsWhatTheRowsAroundLeaveNoDoubtAbout) {
  EXPECT_EQ(Repaired({"R11", "?R1?", "R13"}), "R11 R12 R13");
  EXPECT_EQ(Repaired({"R11", "?RIZ7", "R13"}), "R11 R12 R13");
  EXPECT_EQ(Repaired({"C7", "?cs", "?cg", "C10"}), "C7 C8 C9 C10");
  EXPECT_EQ(Repaired({"R11", "?R1Z", "R15"}), "R11 R12 R15") << "only R12 looks like it";
}

TEST(NameRows, PutsARowRightThatIsOutOfStep) {
  EXPECT_EQ(Repaired({"R10", "R11", "R72", "R13", "R14", "R15"}), "R10 R11 R12 R13 R14 R15");
  EXPECT_EQ(Repaired({"C12", "C113", "C14", "C15", "C16", "C17"}), "C12 C13 C14 C15 C16 C17");
}

TEST(NameRows, LeavesListsAloneThatDoNotCountUp) {
  EXPECT_EQ(Repaired({"R10", "R2", "R13", "R4", "R15", "R3"}), "R10 R2 R13 R4 R15 R3");
}

TEST(NameRows, DoesNotGuessBetweenSeveral) {
  EXPECT_EQ(Repaired({"R11", "?R?", "R19"}).substr(0, 4), "R11 ");
  EXPECT_EQ(Repaired({"R11", "?@@@@", "R15"}), "R11 ? R15");
}

TEST(NameRows, NeverListsAPartTwice) {
  // C8 is taken, so of what looks like "cs" only C5 is left.
  EXPECT_EQ(Repaired({"C3", "C4,8", "?cs", "C6", "C7"}), "C3 C4 C5 C6 C7");
}

TEST(NameRows, DoesNotCrossAssemblies) {
  std::vector<ListRow> rows(3);
  rows[0].designators = *ExpandDesignators("R1", Tables(), RangeStyle::kList);
  rows[1].designator_text = "@2";
  rows[2].designators = *ExpandDesignators("R3", Tables(), RangeStyle::kList);
  rows[2].assembly = "A2";
  NameRows(rows, Tables());
  EXPECT_TRUE(rows[1].designators.empty());
}

// What a row is named that was read as `readings`, the surest first, and whose description begins with `word`, between
// rows of two sure names.
std::string NamedBetween(const std::string& above, const std::vector<Alternative>& readings, const std::string& word,
                         const std::string& below) {
  std::vector<ListRow> rows(3);
  rows[0].designators = *ExpandDesignators(above, Tables(), RangeStyle::kList);
  rows[1].readings = readings;
  rows[1].designator_text = readings.front().text;
  rows[1].designators = *ExpandDesignators(readings.front().text, Tables(), RangeStyle::kList);
  rows[1].designator_confidence = readings.front().confidence;
  Piece piece;
  piece.text = word;
  rows[1].lines = {{piece}};
  rows[2].designators = *ExpandDesignators(below, Tables(), RangeStyle::kList);
  NameRows(rows, Tables());
  return rows[1].designators.empty() ? std::string() : rows[1].designators.front().Text();
}

TEST(NameRows, TakesTheClassFromTheWordsOfTheRow) {
  EXPECT_EQ(NamedBetween("R11", {{"K12", 0.6}}, "Resistor,", "R13"), "R12");
}

// The only lamp of a list: no other row has its class, but its words tell it.
TEST(NameRows, BelievesABadlyReadNameOfTheClassThatItsWordsTell) {
  EXPECT_EQ(NamedBetween("F1", {{"I1", 0.18}, {"Ii", 0.07}, {"J1", 0.04}, {"11", 0.03}}, "LAMP,", "L1"), "I1");
}

TEST(NameRows, RanksWhatTheReadersSaw) {
  std::vector<ListRow> rows(3);
  rows[0].designators = *ExpandDesignators("C4", Tables(), RangeStyle::kList);
  rows[1].readings = {{"U6", 0.4}, {"C5", 0.3}};
  rows[1].designator_text = "U6";
  rows[2].designators = *ExpandDesignators("C6", Tables(), RangeStyle::kList);
  NameRows(rows, Tables());
  ASSERT_EQ(rows[1].designators.size(), 1U);
  EXPECT_EQ(rows[1].designators.front().Text(), "C5");
}

TEST(NameRows, TakesEmptyInput) {
  std::vector<ListRow> rows;
  NameRows(rows, Tables());
  EXPECT_TRUE(rows.empty());
}

}  // namespace
}  // namespace benchleaf::extract
