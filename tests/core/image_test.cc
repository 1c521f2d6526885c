#include "benchleaf/core/image.h"

#include <gmock/gmock.h>

#include <utility>
#include <vector>

namespace benchleaf {
namespace {

using testing::ElementsAre;

GreyImage SixPixels() {
  GreyImage image(3, 2);
  image.pixels = {1, 2, 3, 4, 5, 6};
  return image;
}

TEST(Image, CropsAreCutToThePicture) {
  EXPECT_THAT(Crop(SixPixels(), {1, 0, 1, 2}).pixels, ElementsAre(2, 5));
  EXPECT_THAT(Crop(SixPixels(), {2, 1, 9, 9}).pixels, ElementsAre(6));
  EXPECT_TRUE(Crop(SixPixels(), {7, 7, 2, 2}).empty());
}

TEST(Image, CropsOfColourKeepTheirThreeBytes) {
  ColorImage image;
  image.width = 2;
  image.height = 2;
  image.pixels = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12};
  EXPECT_THAT(Crop(image, {1, 0, 1, 2}).pixels, ElementsAre(4, 5, 6, 10, 11, 12));
  EXPECT_THAT(Crop(image, {0, 1, 9, 9}).pixels, ElementsAre(7, 8, 9, 10, 11, 12));
  EXPECT_TRUE(Crop(image, {5, 5, 2, 2}).pixels.empty());
}

TEST(Image, TurnsClockwise) {
  EXPECT_EQ(Turned(SixPixels(), 0), SixPixels());
  const GreyImage quarter = Turned(SixPixels(), 90);
  EXPECT_EQ(quarter.width, 2);
  EXPECT_THAT(quarter.pixels, ElementsAre(4, 1, 5, 2, 6, 3));
  EXPECT_THAT(Turned(SixPixels(), 180).pixels, ElementsAre(6, 5, 4, 3, 2, 1));
  EXPECT_THAT(Turned(SixPixels(), 270).pixels, ElementsAre(3, 6, 2, 5, 1, 4));
}

TEST(Image, FourQuarterTurnsGiveTheSamePicture) {
  GreyImage image = SixPixels();
  for (int i = 0; i < 4; ++i) {
    image = Turned(image, 90);
  }
  EXPECT_EQ(image, SixPixels());
}

TEST(InkImage, InksRunsAcrossWords) {
  for (const auto& [begin, end] : {std::pair(0, 1), {3, 31}, {31, 33}, {32, 64}, {5, 99}, {40, 40}}) {
    InkImage ink(100, 2);
    ink.row(1).Ink(begin, end);
    EXPECT_EQ(CountInk(ink), end - begin) << begin;
    for (int x = 0; x < ink.width; ++x) {
      EXPECT_EQ(ink.row(1)[x], x >= begin && x < end ? 1 : 0) << begin << " " << x;
    }
  }
}

TEST(InkImage, FindsTheNextInkAndGround) {
  InkImage drawn(70, 1);
  drawn.row(0).Ink(33, 70);
  drawn.row(0)[50] = 0;
  const InkImage& ink = drawn;
  EXPECT_EQ(ink.row(0).NextInk(0), 33);
  EXPECT_EQ(ink.row(0).NextGround(33), 50);
  EXPECT_EQ(ink.row(0).NextInk(50), 51);
  EXPECT_EQ(ink.row(0).NextGround(51), 70) << "none: the width";
  EXPECT_EQ(ink.row(0).NextInk(70), 70);
}

TEST(InkImage, TakesRowsFromBytes) {
  InkImage ink(35, 1);
  std::vector<std::uint8_t> bytes(35, 0);
  bytes[0] = bytes[31] = bytes[34] = 1;
  ink.row(0).Take(bytes.data(), 35);
  EXPECT_EQ(CountInk(ink), 3);
  EXPECT_EQ(ink.row(0)[0] + ink.row(0)[31] + ink.row(0)[34], 3);
}

}  // namespace
}  // namespace benchleaf
