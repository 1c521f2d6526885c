#include "clean/leader_cuts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace benchleaf {
namespace {

constexpr double kCap = 24;

void Put(InkImage& ink, const Box& box) {
  for (int y = box.y; y < box.bottom(); ++y) ink.row(y).Ink(box.x, box.right());
}

// A stroke 5 px wide along a row, that moves by `drift` px a row.
void PutLeader(InkImage& ink, int x, int top, int bottom, double drift) {
  for (int y = top; y < bottom; ++y) {
    const int left = x + static_cast<int>(std::lround(drift * (y - top)));
    ink.row(y).Ink(left, left + 5);
  }
}

// Rows to columns.
InkImage Standing(const InkImage& ink) {
  InkImage standing(ink.height, ink.width);
  for (int y = 0; y < ink.height; ++y) {
    for (int x = 0; x < ink.width; ++x) standing.row(x)[y] = ink.row(y)[x];
  }
  return standing;
}

// Two letters of a row, a gap of 7 px between them.
const Box kFirst{83, 88, 14, 24};
const Box kSecond{104, 88, 14, 24};

// The largest height of what is left, after leaders are cut.
int HeightAfterCut(InkImage& ink) {
  CutLeaders(FindComponents(ink), kCap, ink);
  int highest = 0;
  for (const Component& one : FindComponents(ink).items) highest = std::max(highest, one.box.height);
  return highest;
}

TEST(LeaderCuts, ALeaderIsCutWhereItLeavesTheRowOfTheLetterBeside) {
  for (const double drift : {-1.0, 0.0, 1.0}) {
    InkImage ink(200, 200);
    Put(ink, kFirst);
    Put(ink, kSecond);
    // Too short for a leader's stroke by itself.
    PutLeader(ink, 108, 111, 132, drift);
    EXPECT_LE(HeightAfterCut(ink), 26) << drift;
    EXPECT_EQ(ink.row(100)[110], 1) << drift;
  }
}

TEST(LeaderCuts, ALeaderOfStandingTextIsCutToo) {
  InkImage ink(200, 200);
  Put(ink, kFirst);
  Put(ink, kSecond);
  PutLeader(ink, 108, 111, 126, 0.5);
  InkImage standing = Standing(ink);
  ASSERT_TRUE(CutLeaders(FindComponents(standing), kCap, standing));
  EXPECT_EQ(FindComponents(standing).items.back().box.width, 24);
}

TEST(LeaderCuts, ALeaderAlongTheRowIsCutFromTheLastLetter) {
  InkImage ink(200, 200);
  Put(ink, kFirst);
  Put(ink, kSecond);
  Put(ink, {118, 98, 30, 5});
  ASSERT_TRUE(CutLeaders(FindComponents(ink), kCap, ink));
  EXPECT_EQ(FindComponents(ink).items.back().box, kSecond);
}

TEST(LeaderCuts, SymbolsThatGoOnToBothSidesOfARowStay) {
  InkImage ink(200, 200);
  Put(ink, kFirst);
  Put(ink, kSecond);
  PutLeader(ink, 108, 60, 90, 0);
  PutLeader(ink, 108, 111, 140, 0);
  const InkImage before = ink;
  EXPECT_FALSE(CutLeaders(FindComponents(ink), kCap, ink));
  EXPECT_EQ(ink, before);
}

TEST(LeaderCuts, SmallLettersKeepTheirStems) {
  InkImage ink(200, 200);
  Put(ink, {83, 95, 14, 17});  // an a
  Put(ink, {104, 95, 14, 17});
  Put(ink, {104, 88, 4, 8});  // a b's stem
  const InkImage before = ink;
  EXPECT_FALSE(CutLeaders(FindComponents(ink), kCap, ink));
  EXPECT_EQ(ink, before);
}

}  // namespace
}  // namespace benchleaf
