#include "extract/designator_range.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf::extract {
namespace {

const Rules::Tables& Tables() { return ShippedRules().tables(); }

// The designators with spaces between, or "-" for none.
std::string Expanded(const std::string& text, RangeStyle style, const Designator* previous = nullptr) {
  const auto designators = ExpandDesignators(text, Tables(), style, previous);
  if (!designators) {
    return "-";
  }
  std::string joined;
  for (const Designator& designator : *designators) {
    joined += (joined.empty() ? "" : " ") + designator.Text();
  }
  return joined;
}

TEST(ExpandDesignators, SpellsOutListsAndRanges) {
  // Ways of writing seen in parts lists of 1958 to 1985: common practice, no source.
  const struct {
    const char* text;
    const char* expanded;
  } kCases[] = {
      {"R7", "R7"},
      {"R1-R4", "R1 R2 R3 R4"},
      {"R1-4", "R1 R2 R3 R4"},
      {"R1THRUR3", "R1 R2 R3"},
      {"R1thruR3", "R1 R2 R3"},
      {"D1~4", "D1 D2 D3 D4"},
      {"C12,14,17", "C12 C14 C17"},
      {"C2,3,6", "C2 C3 C6"},
      {"C4-8-11", "C4 C8 C11"},  // commas that lost their tails
      {"C103,105-108", "C103 C105 C106 C107 C108"},
      {"R1,R2&R5", "R1 R2 R5"},
      {"C1A/B/C", "C1A C1B C1C"},
      {"C1A-C", "C1A C1B C1C"},
      {"C1A,B", "C1A C1B"},
      {"A4C1-3", "A4C1 A4C2 A4C3"},
      {"R1O1,103", "R101 R103"},
      {"C2.3.6", "C2 C3 C6"},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(Expanded(one.text, RangeStyle::kList), one.expanded) << one.text;
  }
}

TEST(ExpandDesignators, RefusesPartNumbersAndNonsense) {
  for (const char* text : {"R-1234", "C12-1034", "A-12345", "R8-R1", "R1-C4", "R1,,2", "R1-", ",R1", "", "12,14",
                           "R1-999", "74-1032-5", "C1-10340", "R5/47K"}) {
    EXPECT_EQ(Expanded(text, RangeStyle::kList), "-") << text;
  }
}

TEST(ExpandDesignators, TakesADashOnADrawingForAPin) {
  EXPECT_EQ(Expanded("J1-4", RangeStyle::kDrawing), "J1") << "pin 4 of J1";
  EXPECT_EQ(Expanded("J1-P1", RangeStyle::kDrawing), "J1 P1") << "a cable's two ends";
  EXPECT_EQ(Expanded("R1-R3", RangeStyle::kDrawing), "R1 R2 R3");
  EXPECT_EQ(Expanded("J1-4", RangeStyle::kList), "J1 J2 J3 J4");
}

TEST(ExpandDesignators, GoesOnFromTheRowAbove) {
  const Designator above{"", "C", "15", "", 1};
  EXPECT_EQ(Expanded("17,21", RangeStyle::kList, &above), "C17 C21");
  const Designator section{"", "C", "1", "A", 1};
  EXPECT_EQ(Expanded("B", RangeStyle::kList, &section), "C1B");
  EXPECT_EQ(Expanded("17,21", RangeStyle::kList), "-") << "numbers alone are never designators";
}

}  // namespace
}  // namespace benchleaf::extract
