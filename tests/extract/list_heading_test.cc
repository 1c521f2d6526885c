#include "extract/list_heading.h"

#include "extract/list_words.h"
#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <sstream>
#include <string>
#include <vector>

namespace benchleaf::extract {
namespace {

const Rules::Tables& Tables() { return ShippedRules().tables(); }

std::vector<std::string> Words(const std::string& line) {
  std::vector<std::string> words;
  std::istringstream in(line);
  for (std::string word; in >> word;) {
    words.push_back(ListWord(word));
  }
  return words;
}

TEST(AssemblyHeading, KnowsTheWaysOfNamingAnAssembly) {
  const struct {
    const char* line;
    const char* assembly;
  } kCases[] = {
      {"ASSEMBLY A4", "A4"},
      {"Assembly A4  SWEEP GENERATOR", "A4"},
      {"A4 POWER SUPPLY BOARD", "A4"},
      {"A4A1 OSCILLATOR SUBASSEMBLY", "A4A1"},
      {"POWER SUPPLY ASSEMBLY (A4)", "A4"},
      {"UNIT 2", "UNIT 2"},
      {"ASSY NO. A12", "A12"},
      {"ASSEMBLY AL CHASSIS", "A1"},  // a stroke read as L
      {"Az CHASSIS UNIT", "A2"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(AssemblyHeading(Words(one.line), Tables()).value_or("-"), one.assembly) << one.line;
  }
}

TEST(AssemblyHeading, IgnoresLinesThatMentionAnAssembly) {
  for (const char* line : {"MOUNTED ON BOARD A4", "USED IN ASSEMBLY A4", "RESISTORS", "POWER SUPPLY", "AS USED",
                           "C4 CAPACITOR", "BOARD, TERMINAL", ""}) {
    EXPECT_FALSE(AssemblyHeading(Words(line), Tables()).has_value()) << line;
  }
}

TEST(DrawnAssembly, ReadsTheTitlesOfDrawings) {
  EXPECT_EQ(DrawnAssembly(Words("P/O A4"), Tables()).value_or("-"), "A4");
  EXPECT_EQ(DrawnAssembly(Words("PART OF A3"), Tables()).value_or("-"), "A3");
  EXPECT_EQ(DrawnAssembly(Words("A4 SCHEMATIC DIAGRAM"), Tables()).value_or("-"), "A4");
  EXPECT_EQ(DrawnAssembly(Words("FIG. 5-1 SCHEMATIC DIAGRAM, ASSEMBLY A1 VERTICAL AMPLIFIER"), Tables()).value_or("-"),
            "A1");
  EXPECT_FALSE(DrawnAssembly(Words("SCHEMATIC DIAGRAM"), Tables()).has_value());
}

TEST(IsColumnTitles, NeedsTitlesOfTwoColumns) {
  EXPECT_TRUE(IsColumnTitles(Words("SYMBOL DESCRIPTION PART NO."), Tables()));
  EXPECT_TRUE(IsColumnTitles(Words("Ref. Desig. Description Part Number Qty."), Tables()));
  EXPECT_FALSE(IsColumnTitles(Words("R1 RESISTOR 470K"), Tables()));
  EXPECT_FALSE(IsColumnTitles({}, Tables()));
}

TEST(IsGroupTitle, KnowsTitlesOfGroups) {
  EXPECT_TRUE(IsGroupTitle(Words("CAPACITORS"), Tables()));
  EXPECT_TRUE(IsGroupTitle(Words("RESISTORS (CONTINUED)"), Tables()));
  EXPECT_FALSE(IsGroupTitle(Words("CAPACITOR .05 MFD"), Tables()));
}

}  // namespace
}  // namespace benchleaf::extract
