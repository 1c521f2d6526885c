#include "outside/kicad_symbol.h"

#include <gtest/gtest.h>

namespace benchleaf::outside {
namespace {

// A pin end at (1, 2) of the symbol, y up. That these are KiCad's turns and mirrors was found by trying them on all
// demos: 89 % of the pins then meet the end of a wire, a label or a no-connect mark, and fewer when the symbol is
// mirrored before it is turned.
TEST(PlacementTest, TurnsCounterClockwiseThenMirrors) {
  struct Case {
    int quarter_turns;
    const char* mirror;
    double x;
    double y;
  };
  const Case kCases[] = {
      {0, "", 1, -2}, {1, "", -2, -1},  {2, "", -1, 2},  {3, "", 2, 1},
      {0, "x", 1, 2}, {0, "y", -1, -2}, {3, "x", 2, -1}, {1, "y", 2, -1},
  };
  for (const Case& one : kCases) {
    const Point place = Placement{{10, 20}, one.quarter_turns, one.mirror}.Place(1, 2);
    EXPECT_EQ(place.x, 10 + one.x) << one.quarter_turns << one.mirror;
    EXPECT_EQ(place.y, 20 + one.y) << one.quarter_turns << one.mirror;
  }
}

TEST(KicadSymbolTest, CountsUnitsByTheNamesOfTheParts) {
  EXPECT_EQ(UnitCount(ParseSExpression("(symbol LM358 (symbol LM358_0_1) (symbol LM358_1_1) (symbol LM358_2_1))")), 2);
  EXPECT_EQ(UnitCount(ParseSExpression("(symbol R (symbol R_0_1) (symbol R_1_1))")), 1);
}

TEST(KicadSymbolTest, TakesTheMarksOfBarsAway) {
  EXPECT_EQ(WithoutBars("~{RESET}"), "RESET");
  EXPECT_EQ(WithoutBars("R/~{W}"), "R/W");
  EXPECT_EQ(WithoutBars("a{b}"), "a{b}");
}

}  // namespace
}  // namespace benchleaf::outside
