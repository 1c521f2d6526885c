#include "benchleaf/report/picture.h"

#include "report/color_image.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

namespace benchleaf {
namespace {

constexpr std::uint8_t kGround = 128;  // grey, the worst ground for a ring

// More red and blue than green by far: the band over whatever it was drawn on.
bool IsBand(const ColorImage& image, int x, int y) {
  const std::uint8_t* p = Pixel(image, x, y);
  return p[0] - p[1] > 80 && p[2] - p[1] > 60;
}

bool IsGround(const ColorImage& image, int x, int y) {
  const std::uint8_t* p = Pixel(image, x, y);
  return p[0] == kGround && p[1] == kGround && p[2] == kGround;
}

bool IsHalo(const ColorImage& image, int x, int y) {
  const std::uint8_t* p = Pixel(image, x, y);
  return p[0] > kGround + 40 && p[0] == p[1] && p[1] == p[2];
}

// A picture whose every pixel says where it is.
ColorImage Marked(int width, int height) {
  ColorImage image = BlankColorImage(width, height, 0);
  for (int y = 0; y < height; ++y) {
    for (int x = 0; x < width; ++x) {
      Pixel(image, x, y)[0] = static_cast<std::uint8_t>(x);
      Pixel(image, x, y)[1] = static_cast<std::uint8_t>(y);
    }
  }
  return image;
}

TEST(DrawRing, LeavesTheBoxAndItsGapAsTheyWere) {
  ColorImage image = BlankColorImage(200, 200, kGround);
  const Box box{80, 90, 40, 20};
  DrawRing(image, box, {.gap_px = 10, .width_px = 4});
  for (int y = box.y - 8; y < box.bottom() + 8; ++y) {
    for (int x = box.x - 5; x < box.right() + 5; ++x) ASSERT_TRUE(IsGround(image, x, y)) << x << ',' << y;
  }
}

TEST(DrawRing, ClosesRoundTheBox) {
  ColorImage image = BlankColorImage(200, 200, kGround);
  const Box box{80, 90, 40, 20};
  DrawRing(image, box, {.gap_px = 10, .width_px = 8});
  // From the middle outwards, every ray meets halo, band, halo.
  for (const auto& [dx, dy] : std::vector<std::pair<int, int>>{{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, 1}}) {
    int band = 0;
    int halo_before = 0;
    int halo_after = 0;
    for (int i = 0; i < 90; ++i) {
      const int x = 100 + dx * i;
      const int y = 100 + dy * i;
      if (IsBand(image, x, y)) ++band;
      if (IsHalo(image, x, y)) ++(band == 0 ? halo_before : halo_after);
    }
    EXPECT_GE(band, 2) << dx << ',' << dy;
    EXPECT_GE(halo_before, 1) << dx << ',' << dy;
    EXPECT_GE(halo_after, 1) << dx << ',' << dy;
  }
}

TEST(DrawRing, AtTheEdgeOfThePictureDrawsWhatFits) {
  ColorImage image = BlankColorImage(50, 50, kGround);
  DrawRing(image, {0, 0, 10, 10}, {.gap_px = 5, .width_px = 4});
  EXPECT_TRUE(IsGround(image, 0, 0));
  EXPECT_TRUE(IsBand(image, 19, 5));
  EXPECT_TRUE(IsBand(image, 5, 19));
}

TEST(DrawRing, WithoutAGapStillLeavesTheBox) {
  ColorImage image = BlankColorImage(60, 60, kGround);
  DrawRing(image, {20, 20, 20, 20}, {.gap_px = 0, .width_px = 4});
  for (int y = 20; y < 40; ++y) {
    for (int x = 20; x < 40; ++x) ASSERT_TRUE(IsGround(image, x, y)) << x << ',' << y;
  }
}

TEST(DrawRing, LetsWhatIsUnderItShineThrough) {
  ColorImage image = BlankColorImage(200, 200, 255);
  for (int x = 0; x < 200; ++x) std::fill_n(Pixel(image, x, 100), kBytesPerPixel, std::uint8_t{0});
  DrawRing(image, {80, 90, 40, 20}, {.gap_px = 10, .width_px = 8});
  int darker = 0;
  for (int x = 50; x < 80; ++x) {
    EXPECT_TRUE(IsBand(image, x, 100) == IsBand(image, x, 103)) << x;
    if (IsBand(image, x, 100) && Pixel(image, x, 100)[0] + 20 < Pixel(image, x, 103)[0]) ++darker;
  }
  EXPECT_GE(darker, 6);
}

TEST(PixelBox, HoldsTheFractionsAndStaysOnThePicture) {
  const ColorImage image = BlankColorImage(100, 50, 0);
  struct Case {
    const char* why;
    FractionBox fractions;
    Box box;
  };
  const std::vector<Case> cases = {
      {"whole pixels", {0.1, 0.2, 0.2, 0.2}, {10, 10, 20, 10}},
      {"grown to whole pixels", {0.105, 0.0, 0.05, 1.0}, {10, 0, 6, 50}},
      {"a point is one pixel", {0.5, 0.5, 0, 0}, {50, 25, 1, 1}},
      {"the corner is the last pixel", {1, 1, 0, 0}, {99, 49, 1, 1}},
      {"beyond the edge is cut", {0.9, 0.9, 0.5, 0.5}, {90, 45, 10, 5}},
  };
  for (const Case& c : cases) EXPECT_EQ(PixelBox(image.width, image.height, c.fractions), c.box) << c.why;
}

TEST(Turned, TurnsThePictureAndTheBoxAlike) {
  const ColorImage image = Marked(40, 20);
  const FractionBox box{0.1, 0.2, 0.25, 0.1};
  const Box pixels = PixelBox(image.width, image.height, box);
  for (const int degrees : {0, 90, 180, 270}) {
    const ColorImage turned = Turned(image, degrees);
    EXPECT_EQ(turned.width, degrees % 180 == 0 ? 40 : 20);
    const Box there = PixelBox(turned.width, turned.height, Turned(box, degrees));
    EXPECT_EQ(there.width * there.height, pixels.width * pixels.height) << degrees;
    // Every pixel of the turned box comes from the box.
    for (int y = there.y; y < there.bottom(); ++y) {
      for (int x = there.x; x < there.right(); ++x) {
        const std::uint8_t* p = Pixel(turned, x, y);
        EXPECT_TRUE(p[0] >= pixels.x && p[0] < pixels.right() && p[1] >= pixels.y && p[1] < pixels.bottom())
            << degrees << ": " << x << ',' << y;
      }
    }
  }
}

TEST(Turned, ByNinetyBringsTheLowerLeftCornerToTheTop) {
  const ColorImage turned = Turned(Marked(40, 20), 90);
  EXPECT_EQ(Pixel(turned, 0, 0)[0], 0);
  EXPECT_EQ(Pixel(turned, 0, 0)[1], 19);
}

TEST(Enlarged, KeepsTheCornersAndStepsEvenlyBetween) {
  ColorImage image = BlankColorImage(2, 1, 0);
  std::fill_n(Pixel(image, 1, 0), kBytesPerPixel, std::uint8_t{200});
  const ColorImage large = Enlarged(image, 4);
  ASSERT_EQ(large.width, 8);
  ASSERT_EQ(large.height, 4);
  EXPECT_EQ(Pixel(large, 0, 0)[0], 0);
  EXPECT_EQ(Pixel(large, 7, 3)[0], 200);
  for (int x = 1; x < 8; ++x) EXPECT_GE(Pixel(large, x, 2)[0], Pixel(large, x - 1, 2)[0]);
}

ColorImage SpotOf(const ColorImage& page, const FractionBox& spot, int orientation) {
  const SpotView view = ViewOfSpots(page.width, page.height, {{spot, ""}});
  return RingedSpots(Crop(page, view.part), view.marks, orientation, 0);
}

TEST(RingedSpots, ShowsTheSpotWithSurroundingsAndARing) {
  ColorImage page = BlankColorImage(1700, 2200, kGround);
  const Box word{850, 1100, 60, 20};
  for (int y = word.y; y < word.bottom(); ++y) {
    for (int x = word.x; x < word.right(); ++x) std::fill_n(Pixel(page, x, y), kBytesPerPixel, std::uint8_t{0});
  }
  const FractionBox spot{850.0 / 1700, 1100.0 / 2200, 60.0 / 1700, 20.0 / 2200};
  const ColorImage picture = SpotOf(page, spot, 0);
  EXPECT_GE(picture.width, 800);
  EXPECT_LE(picture.width, 1800);
  // The word is whole and lies within the ring.
  Box ink;
  Box band;
  for (int y = 0; y < picture.height; ++y) {
    for (int x = 0; x < picture.width; ++x) {
      if (Pixel(picture, x, y)[0] == 0 && Pixel(picture, x, y)[2] == 0) ink = Union(ink, {x, y, 1, 1});
      if (IsBand(picture, x, y)) band = Union(band, {x, y, 1, 1});
    }
  }
  ASSERT_FALSE(ink.empty());
  ASSERT_FALSE(band.empty());
  EXPECT_NEAR(static_cast<double>(ink.width) / ink.height, 3.0, 0.2);
  EXPECT_EQ(Intersection(ink, band), ink);
  EXPECT_GT(picture.width, 2 * band.width);
}

TEST(RingedSpots, OnASidewaysPageStandsUpright) {
  ColorImage page = BlankColorImage(1000, 1400, kGround);
  const ColorImage picture = SpotOf(page, {0.5, 0.3, 0.01, 0.4}, 90);
  EXPECT_GT(picture.width, picture.height);  // the long box lies now
}

TEST(RingedSpots, OnAPageOfOnePixelIsStillAPicture) {
  const ColorImage picture = SpotOf(BlankColorImage(1, 1, kGround), {0, 0, 1, 1}, 0);
  EXPECT_GE(picture.width, 1);
  EXPECT_GE(picture.height, 1);
}

TEST(RingedPage, FitsTheSideAndRingsTheSpot) {
  const ColorImage page = BlankColorImage(3400, 4400, kGround);
  const ColorImage picture = RingedPage(page, {{{0.25, 0.75, 0.01, 0.005}, ""}}, 0, 1600);
  EXPECT_EQ(picture.height, 1600);
  EXPECT_NEAR(picture.width, 1236, 1);
  Box band;
  for (int y = 0; y < picture.height; ++y) {
    for (int x = 0; x < picture.width; ++x) {
      if (IsBand(picture, x, y)) band = Union(band, {x, y, 1, 1});
    }
  }
  EXPECT_NEAR(band.center_x(), picture.width * 0.255, 2);
  EXPECT_NEAR(band.center_y(), picture.height * 0.7525, 2);
  EXPECT_GE(band.width, 1600 / 40);  // seen at once
}

}  // namespace
}  // namespace benchleaf
