#include "benchleaf/pixels/operations.h"

#include "benchleaf/pixels/lines.h"

#include <gmock/gmock.h>

#include <cmath>
#include <numeric>

namespace benchleaf {
namespace {

void Fill(GreyImage& image, const Box& box, std::uint8_t grey) {
  for (int y = box.y; y < box.bottom(); ++y) {
    for (int x = box.x; x < box.right(); ++x) {
      image.row(y)[x] = grey;
    }
  }
}

void Fill(InkImage& ink, const Box& box, std::uint8_t value = 1) {
  for (int y = box.y; y < box.bottom(); ++y) {
    for (int x = box.x; x < box.right(); ++x) {
      ink.row(y)[x] = value;
    }
  }
}

int Count(const InkImage& ink) { return std::accumulate(ink.pixels.begin(), ink.pixels.end(), 0); }

TEST(EvenGround, PaperIsWhiteAndInkDarkOnBothEndsOfAShadow) {
  GreyImage page(400, 200);
  for (int y = 0; y < page.height; ++y) {
    for (int x = 0; x < page.width; ++x) {
      page.row(y)[x] = static_cast<std::uint8_t>(230 - x / 4);  // 230 at the left, 131 at the right
    }
  }
  Fill(page, {40, 90, 6, 20}, 60);
  Fill(page, {350, 90, 6, 20}, 50);
  const GreyImage even = WithEvenGround(page, 40);
  EXPECT_GT(even.row(100)[20], 240);
  EXPECT_GT(even.row(100)[380], 240);
  EXPECT_LT(even.row(100)[43], 110);
  EXPECT_LT(even.row(100)[353], 110);
}

TEST(Binarized, SeesFaintLettersBesideBlackOnes) {
  GreyImage page(300, 100, 250);
  Fill(page, {50, 40, 3, 20}, 10);
  Fill(page, {200, 40, 3, 20}, 150);
  const InkImage ink = Binarized(page, 20, 0.22);
  EXPECT_EQ(ink.row(50)[51], 1);
  EXPECT_EQ(ink.row(50)[201], 1);
  EXPECT_EQ(ink.row(50)[120], 0);
}

TEST(Binarized, PicturesSmallerThanTheWindowHaveNoInk) { EXPECT_EQ(Count(Binarized(GreyImage(1, 1, 0), 20, 0.2)), 0); }

TEST(SplitLines, TakesWiresAndKeepsLetters) {
  InkImage ink(600, 300);
  Fill(ink, {0, 150, 600, 3});  // a wire
  Fill(ink, {300, 0, 3, 300});  // and one across
  Fill(ink, {100, 50, 3, 24});  // a letter's stem
  const LineSplit split = SplitLines(ink, 53, 5, 11);
  EXPECT_EQ(split.rest.row(151)[200], 0);
  EXPECT_EQ(split.rest.row(40)[301], 0);
  EXPECT_EQ(split.rest.row(60)[101], 1);
  EXPECT_EQ(split.long_horizontal, 1);
  EXPECT_EQ(split.long_vertical, 1);
  EXPECT_GT(split.line_ink, 0.9);
}

TEST(SplitLines, MendsALetterThatAWireCrosses) {
  InkImage ink(400, 200);
  Fill(ink, {0, 100, 400, 3});
  Fill(ink, {200, 88, 3, 26});  // a stem through the wire
  const LineSplit split = SplitLines(ink, 53, 5, 11);
  for (int y = 88; y < 114; ++y) {
    EXPECT_EQ(split.rest.row(y)[201], 1) << y;
  }
  EXPECT_EQ(split.rest.row(101)[150], 0);
}

TEST(FindSkew, FindsASmallTurnEitherWay) {
  for (const double degrees : {-2.0, 0.7, 3.0}) {
    InkImage ink(1200, 1200);
    const double slope = std::tan(degrees * M_PI / 180);
    for (int line = 0; line < 20; ++line) {
      for (int x = 100; x < 1100; ++x) {
        const int y = static_cast<int>(std::lround(150 + line * 45 + x * slope));
        if (y >= 0 && y + 4 < ink.height && (x / 15) % 3 != 0) {
          Fill(ink, {x, y, 1, 4});
        }
      }
    }
    // Rows that fall to the right stand turned clockwise; levelling turns them back.
    EXPECT_NEAR(FindSkew(ink, 6).degrees, -degrees, 0.15) << degrees;
  }
}

TEST(Scaled, KeepsProportions) {
  const GreyImage page(300, 150, 200);
  EXPECT_EQ(Scaled(page, 2).width, 600);
  EXPECT_EQ(Scaled(page, 0.5).height, 75);
  EXPECT_EQ(Scaled(page, 0.5).row(30)[30], 200);
}

}  // namespace
}  // namespace benchleaf
