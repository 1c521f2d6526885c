#include "clean/callout_rings.h"

#include <gtest/gtest.h>

#include <cmath>

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

// Two letters in a ring of 38 px about (200, 200), the first as far as the ring.
InkImage RingedLetters() {
  InkImage ink(400, 400);
  Put(ink, {160, 188, 37, 24});
  Put(ink, {204, 188, 14, 24});
  PutRing(ink, 200, 200, 38);
  return ink;
}

void ExpectOnlyLetters(const InkImage& ink) {
  EXPECT_EQ(ink.row(200)[200 + 38], 0);
  EXPECT_EQ(ink.row(200 - 38)[200], 0);
  EXPECT_EQ(ink.row(200)[190], 1);
  EXPECT_EQ(ink.row(200)[210], 1);
}

TEST(CalloutRings, ARingThatLettersTouchIsTakenOffThem) {
  InkImage ink = RingedLetters();
  RubOutRings(kCap, ink);
  ExpectOnlyLetters(ink);
}

TEST(CalloutRings, ARingIsFoundAmongLinesThatTouchIt) {
  InkImage ink = RingedLetters();
  Put(ink, {0, 236, 400, 5});
  Put(ink, {238, 0, 5, 400});
  RubOutRings(kCap, ink);
  ExpectOnlyLetters(ink);
  EXPECT_EQ(ink.row(238)[100], 1) << "the lines stay";
}

TEST(CalloutRings, ATightRingIsTakenOffOneFigure) {
  InkImage ink(400, 400);
  Put(ink, {197, 190, 4, 22});
  PutRing(ink, 200, 200, 18);
  EXPECT_EQ(RubOutRings(kCap, ink).size(), 1U);
  EXPECT_EQ(ink.row(200)[218], 0);
  EXPECT_EQ(ink.row(200)[198], 1);
}

TEST(CalloutRings, AnEmptyRingStays) {
  InkImage ink(400, 400);
  PutRing(ink, 200, 200, 38);
  const InkImage before = ink;
  RubOutRings(kCap, ink);
  EXPECT_EQ(ink, before) << "nothing would be won";
}

TEST(CalloutRings, ASquareIsNoRing) {
  InkImage ink(400, 400);
  for (const Box& side : {Box{170, 170, 60, 4}, Box{170, 226, 60, 4}, Box{170, 170, 4, 60}, Box{226, 170, 4, 60}}) {
    Put(ink, side);
  }
  Put(ink, {190, 188, 20, 24});
  const InkImage before = ink;
  RubOutRings(kCap, ink);
  EXPECT_EQ(ink, before);
}

}  // namespace
}  // namespace benchleaf
