#include "clean/title_mending.h"

#include "benchleaf/pixels/lines.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

void Put(InkImage& ink, const Box& box) {
  for (int y = box.y; y < box.bottom(); ++y) ink.row(y).Ink(box.x, box.right());
}

// Letters 40 px high, each on a foot of 60 px, which is a line.
bool MendFeet(int letters, InkImage& ink, InkImage& rest) {
  for (int i = 0; i < letters; ++i) {
    Put(ink, {77 + 64 * i, 100, 6, 40});
    Put(ink, {50 + 64 * i, 137, 60, 3});
  }
  rest = SplitLines(ink, 53, 5, 11).rest;
  EXPECT_EQ(rest.row(138)[52], 0) << "the feet are taken for a line";
  return MendTitles(ink, 24, rest);
}

TEST(TitleMending, PutsBackTheFeetOfATitlesLetters) {
  InkImage ink(500, 300);
  InkImage rest;
  EXPECT_TRUE(MendFeet(6, ink, rest));
  EXPECT_EQ(rest.row(138)[52], 1);
  EXPECT_FALSE(MendTitles(ink, 24, rest)) << "nothing is missing any more";
}

TEST(TitleMending, ThreeShapesInARowAreNoTitle) {
  InkImage ink(500, 300);
  InkImage rest;
  EXPECT_FALSE(MendFeet(3, ink, rest));
  EXPECT_EQ(rest.row(138)[52], 0);
}

// A wire that letters of a title touch is no letter.
TEST(TitleMending, LeavesOutWhatIsLongerThanAWord) {
  InkImage ink(600, 300);
  Put(ink, {0, 137, 600, 3});
  for (int i = 0; i < 6; ++i) {
    Put(ink, {50 + 34 * i, 100, 4, 40});
  }
  InkImage rest = SplitLines(ink, 53, 5, 11).rest;
  EXPECT_FALSE(MendTitles(ink, 24, rest));
  EXPECT_EQ(rest.row(138)[20], 0);
}

}  // namespace
}  // namespace benchleaf
