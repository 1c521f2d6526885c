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
