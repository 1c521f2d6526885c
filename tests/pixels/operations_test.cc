#include "benchleaf/pixels/operations.h"

#include "benchleaf/pixels/lines.h"

#include <gmock/gmock.h>

#include <cmath>
#include <random>

namespace benchleaf {
namespace {

void Fill(GreyImage& image, const Box& box, std::uint8_t grey) {
  for (int y = box.y; y < box.bottom(); ++y) {
    for (int x = box.x; x < box.right(); ++x) {
      image.row(y)[x] = grey;
    }
  }
}

void Fill(InkImage& ink, const Box& box) {
  for (int y = box.y; y < box.bottom(); ++y) {
    ink.row(y).Ink(box.x, box.right());
  }
}

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

TEST(EvenGround, NoiseInDeepShadeStaysPale) {
  GreyImage page(800, 400, 220);
  Fill(page, {0, 0, 200, 400}, 50);
  for (int y = 0; y < page.height; y += 7) {
    for (int x = 3; x < 200; x += 7) page.row(y)[x] = 34;  // noise that is a third of the shade's level
  }
  Fill(page, {500, 190, 6, 20}, 60);
  const GreyImage even = WithEvenGround(page, 40);
  EXPECT_GT(even.row(210)[101], 225);
  EXPECT_GT(even.row(210)[60], 225);
  EXPECT_LT(even.row(200)[503], 110);
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

TEST(Binarized, PicturesSmallerThanTheWindowHaveNoInk) {
  EXPECT_EQ(CountInk(Binarized(GreyImage(1, 1, 0), 20, 0.2)), 0);
}

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

TEST(SplitLines, TellsWhereAStemCrossesAWire) {
  InkImage ink(400, 200);
  Fill(ink, {0, 100, 400, 3});
  Fill(ink, {200, 88, 3, 26});  // a stem through the wire
  Fill(ink, {300, 88, 3, 12});  // and one that ends on it
  const LineSplit split = SplitLines(ink, 53, 5, 11);
  EXPECT_EQ(split.rest.row(101)[201], 0);
  ASSERT_FALSE(split.crossings.empty());
  for (const LineCrossing& crossing : split.crossings) {
    EXPECT_FALSE(crossing.standing);
    EXPECT_NEAR(crossing.cut.x, 201, 3);
    EXPECT_EQ(crossing.cut.y, 100);
    EXPECT_EQ(crossing.cut.height, 3);
  }
}

TEST(SplitLines, TakesTheSidesOfABoxAndKeepsWhatStandsInIt) {
  InkImage ink(400, 200);
  Fill(ink, {100, 80, 120, 4});
  Fill(ink, {100, 116, 120, 4});
  Fill(ink, {100, 80, 4, 40});  // sides shorter than any line
  Fill(ink, {216, 80, 4, 40});
  Fill(ink, {40, 99, 64, 3});   // a lead that ends on one of them
  Fill(ink, {150, 88, 3, 24});  // a letter's stem
  const LineSplit split = SplitLines(ink, 53, 5, 11);
  EXPECT_EQ(split.rest.row(90)[101], 0);
  EXPECT_EQ(split.rest.row(110)[218], 0);
  EXPECT_EQ(split.rest.row(100)[151], 1);
}

// The stems of a 1 in a resistor's box and of a 1 under it, with the box's side between them.
TEST(SplitLines, KeepsLettersThatStandOverEachOther) {
  InkImage ink(400, 200);
  Fill(ink, {100, 98, 120, 4});
  Fill(ink, {150, 70, 3, 24});
  Fill(ink, {150, 106, 3, 24});
  const LineSplit split = SplitLines(ink, 53, 5, 11);
  EXPECT_EQ(split.rest.row(80)[151], 1);
  EXPECT_EQ(split.rest.row(120)[151], 1);
  EXPECT_EQ(split.rest.row(100)[151], 0) << "nothing crosses the box";
}

TEST(SplitLines, ALinesRaggedEdgeTiesNoLettersTogether) {
  InkImage ink(400, 200);
  Fill(ink, {50, 100, 300, 4});
  Fill(ink, {135, 104, 45, 1});  // the edge
  Fill(ink, {140, 104, 3, 20});  // letters that stand on it
  Fill(ink, {170, 104, 3, 20});
  const LineSplit split = SplitLines(ink, 53, 5, 11);
  EXPECT_EQ(split.rest.row(104)[141], 1);
  EXPECT_EQ(split.rest.row(104)[155], 0);
  EXPECT_EQ(split.rest.row(104)[171], 1);
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

TEST(Leveled, TurnsClockwiseAboutTheMiddle) {
  GreyImage page(401, 301);
  Fill(page, {300, 149, 40, 3}, 0);  // a bar to the right of the middle
  const GreyImage turned = Leveled(page, 5);
  // 120 px to the right of the middle it has gone down by 120 * tan(5 degrees), and right of its end there is paper.
  EXPECT_LT(turned.row(160)[320], 40);
  EXPECT_GT(turned.row(150)[320], 215);
  EXPECT_EQ(turned.row(0)[400], 255) << "what comes in is paper";
  EXPECT_EQ(Leveled(page, 0).row(150)[320], 0);
}

TEST(Blurred, GivesTheMeanOfTheNeighbours) {
  GreyImage page(7, 5, 90);
  page.row(2)[3] = 0;
  page.row(0)[0] = 0;
  const GreyImage blurred = Blurred(page, 1);
  EXPECT_EQ(blurred.row(2)[3], 80);
  EXPECT_EQ(blurred.row(3)[4], 80);
  EXPECT_EQ(blurred.row(2)[5], 90);
  EXPECT_EQ(blurred.row(0)[0], 68) << "the corner has three neighbours: 270 / 4";
  EXPECT_EQ(blurred.row(4)[6], 90);
}

TEST(Shrunk, GivesEachPixelItsShareOfTheArea) {
  GreyImage page(5, 4, 200);
  Fill(page, {0, 0, 2, 4}, 0);
  const GreyImage small = Shrunk(page, 0.5);  // 5 px fall on 3, 4 on 2
  ASSERT_EQ(small.width, 3);
  ASSERT_EQ(small.height, 2);
  EXPECT_EQ(small.row(0)[0], 0) << "1.67 px of ink";
  EXPECT_EQ(small.row(1)[1], 160) << "0.33 px of ink and 1.33 px of paper";
  EXPECT_EQ(small.row(1)[2], 200);
  EXPECT_EQ(Shrunk(page, 1), page);
}

TEST(Thresholded, TakesWhatIsDarker) {
  GreyImage page(40, 2, 160);
  page.row(1)[33] = 159;
  EXPECT_EQ(CountInk(Thresholded(page, 160)), 1);
  EXPECT_EQ(Thresholded(page, 160).row(1)[33], 1);
}

TEST(OnItsSide, PutsTheTopToTheRight) {
  InkImage ink(40, 3);
  ink.row(0)[39] = 1;
  const InkImage turned = OnItsSide(ink);
  EXPECT_EQ(turned.width, 3);
  EXPECT_EQ(turned.height, 40);
  EXPECT_EQ(turned.row(39)[2], 1);
  EXPECT_EQ(CountInk(turned), 1);
}

// The threshold by the formula itself, at some places of random grey.
TEST(Binarized, FollowsSauvola) {
  constexpr int kHalf = 3;
  constexpr double kK = 0.3;
  std::mt19937 random(5);
  GreyImage page(70, 40);
  for (std::uint8_t& level : page.pixels) {
    level = static_cast<std::uint8_t>(random() % 256);
  }
  const InkImage ink = Binarized(page, kHalf, kK);
  for (int y = kHalf; y < page.height - kHalf; ++y) {
    for (int x = kHalf; x < page.width - kHalf; ++x) {
      double sum = 0;
      double squares = 0;
      for (int row = y - kHalf; row <= y + kHalf; ++row) {
        for (int column = x - kHalf; column <= x + kHalf; ++column) {
          sum += page.row(row)[column];
          squares += page.row(row)[column] * page.row(row)[column];
        }
      }
      const double mean = sum / 49;
      const double threshold = mean * (1 - kK * (1 - std::sqrt(squares / 49 - mean * mean) / 128));
      // Mean and threshold are rounded to whole levels.
      if (std::abs(page.row(y)[x] - threshold) > 2) {
        EXPECT_EQ(ink.row(y)[x], page.row(y)[x] < threshold ? 1 : 0) << x << " " << y;
      }
    }
  }
}

TEST(Enlarged, KeepsPlainGroundAndThePlaceOfEdges) {
  GreyImage page(100, 60, 200);
  Fill(page, {50, 0, 50, 60}, 20);
  const GreyImage large = Enlarged(page, 2.5);
  EXPECT_EQ(large.width, 250);
  EXPECT_EQ(large.height, 150);
  EXPECT_EQ(large.row(75)[60], 200);
  EXPECT_EQ(large.row(75)[200], 20);
  EXPECT_GT(large.row(75)[122], 150) << "paper ends at 125";
  EXPECT_LT(large.row(75)[127], 70);
  EXPECT_TRUE(Enlarged({}, 2).empty());
}

TEST(Scaled, KeepsProportions) {
  const GreyImage page(300, 150, 200);
  EXPECT_EQ(Scaled(page, 2).width, 600);
  EXPECT_EQ(Scaled(page, 0.5).height, 75);
  EXPECT_EQ(Scaled(page, 0.5).row(30)[30], 200);
}

}  // namespace
}  // namespace benchleaf
