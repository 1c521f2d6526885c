#include "clean/callout_lines.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstddef>

namespace benchleaf {
namespace {

constexpr double kCap = 24;

void Put(InkImage& ink, const Box& box) {
  for (int y = box.y; y < box.bottom(); ++y) ink.row(y).Ink(box.x, box.right());
}

void PutRing(InkImage& ink, int x, int y, double radius) {
  for (int py = 0; py < ink.height; ++py) {
    for (int px = 0; px < ink.width; ++px) {
      if (std::abs(std::hypot(px - x, py - y) - radius) <= 2) {
        ink.row(py)[px] = 1;
      }
    }
  }
}

// A stroke 5 px wide along a row, that moves by `drift` px a row.
void PutLeader(InkImage& ink, int x, int top, int bottom, double drift) {
  for (int y = top; y < bottom; ++y) {
    const int left = x + static_cast<int>(std::lround(drift * (y - top)));
    ink.row(y).Ink(left, left + 5);
  }
}

// Two letters without holes, a gap of 7 px between them.
const Box kFirst{183, 188, 14, 24};
const Box kSecond{204, 188, 14, 24};

bool RubOut(InkImage& ink) { return RubOutCalloutLines(FindComponents(ink), kCap, ink); }

TEST(CalloutLines, ARingThatLettersTouchIsTakenOffThem) {
  InkImage ink(400, 400);
  Put(ink, {160, 188, 37, 24});  // as far as the ring
  Put(ink, kSecond);
  PutRing(ink, 200, 200, 38);
  ASSERT_TRUE(RubOut(ink));
  EXPECT_EQ(ink.row(200)[200 + 38], 0);
  EXPECT_EQ(ink.row(200 - 38)[200], 0);
  EXPECT_EQ(ink.row(200)[190], 1);
  EXPECT_EQ(ink.row(200)[210], 1);
}

TEST(CalloutLines, AnEmptyRingStays) {
  InkImage ink(400, 400);
  PutRing(ink, 200, 200, 38);
  RubOut(ink);
  EXPECT_EQ(ink.row(200)[200 + 38], 1) << "nothing would be won";
}

TEST(CalloutLines, ALeaderIsTakenOffTheLetterWhereItEnds) {
  for (const double drift : {-1.0, -0.4, 0.4, 1.0}) {
    InkImage ink(400, 400);
    Put(ink, kFirst);
    Put(ink, kSecond);
    PutLeader(ink, 207, 211, 300, drift);
    ASSERT_TRUE(RubOut(ink)) << drift;
    EXPECT_EQ(FindComponents(ink).items.back().box, kSecond) << drift;
  }
}

TEST(CalloutLines, LettersOfTwiceTheHeightKeepTheirStems) {
  InkImage ink(400, 400);
  PutLeader(ink, 100, 100, 148, 0);
  Put(ink, {86, 100, 32, 5});
  const InkImage before = ink;
  EXPECT_FALSE(RubOut(ink));
  EXPECT_EQ(ink, before);
}

}  // namespace
}  // namespace benchleaf
