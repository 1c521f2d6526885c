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
      {"UNIT I CHASSIS", "UNIT 1"},  // a stroke for the figure
      {"ASSY NO. A12", "A12"},
      {"ASSEMBLY AL CHASSIS", "A1"},  // a stroke read as L
      {"Az CHASSIS UNIT", "A2"},
      {"ASKMBLY A1 CHASSIS UNIT", "A1"},  // an underline touches the letters
      {"ASSEMBIYA1 CHASSIS UNIT", "A1"},
      {"ASSEMRLY Al CHASSIS UNIT", "A1"},
      {"UN1T A2 SWEEP GENERATOR", "A2"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(AssemblyHeading(Words(one.line), Tables()).value_or("-"), one.assembly) << one.line;
  }
}

TEST(AssemblyHeading, IgnoresLinesThatMentionAnAssembly) {
  for (const char* line : {"MOUNTED ON BOARD A4", "USED IN ASSEMBLY A4", "RESISTORS", "POWER SUPPLY", "AS USED",
                           "C4 CAPACITOR", "BOARD, TERMINAL", "ALIGN A1 FOR MAXIMUM", "UNIS 2", ""}) {
    EXPECT_FALSE(AssemblyHeading(Words(line), Tables()).has_value()) << line;
  }
}

TEST(TitledAssembly, ReadsTheTitlesOfDrawings) {
  const struct {
    const char* line;
    const char* assembly;
  } kCases[] = {
      {"A4 SCHEMATIC DIAGRAM", "A4"},
      {"FIG. 5-1 SCHEMATIC DIAGRAM, ASSEMBLY A1 VERTICAL AMPLIFIER", "A1"},
      {"FIG. 5-2 SCHEMATIC DIAGRAM, UNIT 2 SWEEP GENERATOR", "UNIT 2"},
      {"SCHEMATIC DIAGRAM, UNIT Z", "UNIT 2"},  // a Z for the figure
      {"PARTS LOCATION, ASSEMBLY A3", "A3"},
      {"SCHEMATIC DIAGRAM", "-"},
      {"SCHEMATIC DIAGRAM, POWER UNIT MODEL 12", "-"},
      {"UNIT 2", "-"},  // no title of a drawing, but a heading
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(TitledAssembly(Words(one.line), Tables()).value_or("-"), one.assembly) << one.line;
  }
}

TEST(WordsOf, PartsWhatASpeckHasJoined) {
  const auto pieces = [](const std::vector<std::string>& texts) {
    std::vector<Piece> made;
    for (const std::string& text : texts) made.emplace_back().text = text;
    return made;
  };
  EXPECT_EQ(AssemblyHeading(WordsOf(pieces({"ASSEMBLY", "A1-CHASS!S", "UNIT"})), Tables()).value_or("-"), "A1");
  EXPECT_EQ(WordsOf(pieces({"20-4663-0", "A1-2", "-UNIT"})).size(), 3U) << "numbers stay whole";
}

TEST(DrawnAssembly, ReadsOtherLinesOfDrawings) {
  EXPECT_EQ(DrawnAssembly(Words("P/O A4"), Tables()).value_or("-"), "A4");
  EXPECT_EQ(DrawnAssembly(Words("PART OF A3"), Tables()).value_or("-"), "A3");
  EXPECT_EQ(DrawnAssembly(Words("UNIT 2 SWEEP GENERATOR"), Tables()).value_or("-"), "UNIT 2");
  EXPECT_FALSE(DrawnAssembly(Words("TO UNIT 3"), Tables()).has_value());
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
