#include "benchleaf/core/image.h"

#include <gmock/gmock.h>

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

}  // namespace
}  // namespace benchleaf
