#include "clean/lettering_height.h"

#include "benchleaf/core/image.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

constexpr int kCap = 14;    // px
constexpr int kWidth = 10;  // of a letter, px

// Forty designators of three letters each, in four columns, among symbols larger than letters.
class LetteringHeightTest : public testing::Test {
 protected:
  LetteringHeightTest() {
    for (int row = 0; row < 10; ++row) {
      for (int column = 0; column < 4; ++column) {
        const int x = 60 + 200 * column;
        const int y = 60 + 70 * row;
        for (int letter = 0; letter < 3; ++letter) PutFrame({x + letter * (kWidth + 3), y, kWidth, kCap});
        PutFrame({x + 80, y - 10, 44, 40});
      }
    }
  }

  Components Upright() const { return FindComponents(ink_); }

  Components OnItsSide() const {
    InkImage turned(ink_.height, ink_.width);
    for (int y = 0; y < ink_.height; ++y) {
      for (int x = 0; x < ink_.width; ++x) {
        if (ink_.row(y)[x]) turned.row(x).Ink(y, y + 1);
      }
    }
    return FindComponents(turned);
  }

 private:
  void PutFrame(const Box& box) {
    for (int y = box.y; y < box.bottom(); ++y) {
      if (y < box.y + 2 || y >= box.bottom() - 2) {
        ink_.row(y).Ink(box.x, box.right());
      } else {
        ink_.row(y).Ink(box.x, box.x + 2);
        ink_.row(y).Ink(box.right() - 2, box.right());
      }
    }
  }

  InkImage ink_{900, 800};
};

TEST_F(LetteringHeightTest, IsTheLettersHeight) { EXPECT_EQ(EstimateCapHeight(Upright(), 20), kCap); }

TEST_F(LetteringHeightTest, IsTheirWidthOnAPageThatLiesOnItsSide) {
  EXPECT_EQ(EstimateCapHeight(OnItsSide(), 20), kCap);
}

TEST_F(LetteringHeightTest, ContradictsAResolutionWhicheverWayThePageLies) {
  EXPECT_EQ(ContradictingHeight(Upright(), 40), kCap);
  EXPECT_EQ(ContradictingHeight(OnItsSide(), 40), kCap);
  EXPECT_EQ(ContradictingHeight(OnItsSide(), 18), 0);
}

}  // namespace
}  // namespace benchleaf
