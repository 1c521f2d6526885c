#include "reading/token_partner.h"

#include <gtest/gtest.h>

#include <vector>

namespace benchleaf {
namespace {

Token At(int x, int width, const char* text) { return {text, {x, 0, width, 20}, 1}; }

TEST(TokenPartner, StandsInTheSamePlace) {
  const std::vector<Token> others = {At(0, 40, "C1"), At(60, 50, "47K")};
  EXPECT_EQ(Partner(At(62, 40, "47K"), others), &others[1]);
  EXPECT_EQ(Partner(At(200, 40, "R7"), others), nullptr);
}

TEST(TokenPartner, IsNoneWhereTheOtherReaderSeesSeveral) {
  EXPECT_EQ(Partner(At(0, 110, "C147K"), {At(0, 40, "C1"), At(60, 50, "47K")}), nullptr);
}

TEST(SameWord, LeavesClosingPointsAside) {
  EXPECT_TRUE(SameWord("6AU6,", "6AU6"));
  EXPECT_TRUE(SameWord("TUBE.", "TUBE:"));
  EXPECT_FALSE(SameWord(".05", "05")) << "a point before a figure counts";
  EXPECT_FALSE(SameWord("6AU6", "6AV6"));
}

}  // namespace
}  // namespace benchleaf
