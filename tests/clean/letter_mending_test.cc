#include "clean/letter_mending.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace benchleaf {
namespace {

void Put(InkImage& ink, const Box& box) {
  for (int y = box.y; y < box.bottom(); ++y) ink.row(y).Ink(box.x, box.right());
}

InkImage Mended(const InkImage& ink) {
  LineSplit split = SplitLines(ink, 53, 5, 11);
  MendLetters(ink, 24, split);
  return split.rest;
}

TEST(LetterMending, MendsALetterThatAWireCrosses) {
  for (const bool standing : {false, true}) {
    InkImage ink(400, 400);
    Put(ink, standing ? Box{100, 0, 3, 400} : Box{0, 100, 400, 3});
    Put(ink, standing ? Box{88, 200, 26, 3} : Box{200, 88, 3, 26});
    const InkImage rest = Mended(ink);
    for (int i = 88; i < 114; ++i) {
      EXPECT_EQ(standing ? rest.row(201)[i] : rest.row(i)[201], 1) << i;
    }
    EXPECT_EQ(standing ? rest.row(150)[101] : rest.row(101)[150], 0);
  }
}

// A value in a resistor's box and the designator under it, both of which touch the box.
TEST(LetterMending, KeepsTwoRowsApartThatTouchALine) {
  InkImage ink(400, 400);
  Put(ink, {0, 100, 400, 3});
  Put(ink, {200, 76, 3, 24});
  Put(ink, {200, 103, 3, 24});
  EXPECT_EQ(Mended(ink).row(101)[201], 0);
}

}  // namespace
}  // namespace benchleaf
