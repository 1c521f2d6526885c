#include "raster/page_layout.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <vector>

namespace benchleaf {
namespace {

// An A4-like page of 480 x 720 pt.
PageLayout Page(std::vector<PlacedPicture> pictures) {
  PageLayout layout;
  layout.width = 480;
  layout.height = 720;
  layout.pictures = std::move(pictures);
  return layout;
}

// A picture over a rectangle of the page.
PlacedPicture At(double x, double y, double width, double height, int width_px, int height_px) {
  return {width_px, height_px, {width, 0, 0, height, x, y}};
}

PlacedPicture WholePage(double dpi) {
  const int width_px = static_cast<int>(480 * dpi / 72);
  const int height_px = static_cast<int>(720 * dpi / 72);
  return {width_px, height_px, {480, 0, 0, 720, 0, 0}};
}

TEST(AffineTest, ChainsInTheOrderOfTheArguments) {
  const Affine move{1, 0, 0, 1, 10, 20};
  const Affine grow{2, 0, 0, 3, 0, 0};
  const Affine turn{0, 1, -1, 0, 0, 0};
  EXPECT_EQ(Chained(move, grow), (Affine{2, 0, 0, 3, 20, 60}));
  EXPECT_EQ(Chained(grow, move), (Affine{2, 0, 0, 3, 10, 20}));
  EXPECT_EQ(Chained(turn, turn), (Affine{-1, 0, 0, -1, 0, 0}));
}

TEST(NativeResolutionTest, FollowsThePictures) {
  const struct {
    std::vector<PlacedPicture> pictures;
    double dpi;
    const char* reason;
  } kCases[] = {
      {{}, 300, "nothing scanned"},
      {{WholePage(150)}, 150, "one picture"},
      {{{1000, 1500, {-480, 0, 0, -720, 480, 720}}}, 150, "stored upside down"},
      {{{1000, 1500, {-480, 0, 0, 720, 480, 0}}}, 150, "stored mirrored"},
      {{{1500, 1000, {0, 720, -480, 0, 480, 0}}}, 150, "stored sideways"},
      {{WholePage(150), WholePage(300)}, 300, "a fine stencil on a coarse ground"},
      {{WholePage(300), WholePage(150)}, 300, "whatever their order"},
      {{WholePage(150), At(0, 0, 48, 72, 400, 600)}, 150, "a small emblem at 600 dpi changes nothing"},
      {{WholePage(150), At(0, 0, 480, 200, 2000, 833)}, 300, "a fine part of more than a quarter"},
      {{At(0, 0, 480, 240, 1000, 500), At(0, 240, 480, 240, 1000, 500), At(0, 480, 480, 240, 1000, 500)},
       150,
       "a page cut into strips"},
      {{WholePage(150), At(0, 0, 480, 90, 2000, 375), At(0, 90, 480, 90, 2000, 375), At(0, 180, 480, 90, 2000, 375)},
       300,
       "fine strips count together"},
      {{At(0, 0, 96, 96, 133, 133), At(96, 0, 96, 96, 200, 200), At(0, 96, 96, 96, 267, 267),
        At(96, 96, 96, 96, 333, 333), At(0, 192, 120, 120, 100, 100)},
       60,
       "none covers a quarter: the largest counts"},
      {{WholePage(150), At(500, 0, 480, 720, 8000, 12000)}, 150, "a picture beside the page is not seen"},
      {{At(0, 0, 480, 720, 1360, 980)}, 204, "oblong pixels of a fax: the finer axis for both"},
      {{At(0, 0, 480, 720, 1, 1)}, 50, "coarser than any scan"},
      {{At(0, 0, 4.8, 7.2, 1000, 1500)}, 1200, "finer than any scan"},
      {{{1000, 1500, {0, 0, 0, 0, 0, 0}}}, 300, "squeezed to nothing"},
      {{{1000, 1500, {std::numeric_limits<double>::quiet_NaN(), 0, 0, 1, 0, 0}}}, 300, "no numbers"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    const auto resolution = NativeResolution(Page(c.pictures), RasterLimits{});
    ASSERT_TRUE(resolution.has_value()) << resolution.error().message;
    EXPECT_NEAR(resolution->dpi(), c.dpi, 0.5);
    EXPECT_EQ(resolution->x_dpi > 0, resolution->y_dpi > 0);
  }
}

TEST(NativeResolutionTest, KeepsTheAxesApartWhenThePageBoxWasRounded) {
  PageLayout layout = Page({At(0, 0, 480, 720, 1000, 1501)});
  const auto upright = NativeResolution(layout, RasterLimits{});
  ASSERT_TRUE(upright.has_value());
  EXPECT_DOUBLE_EQ(upright->x_dpi, 150);
  EXPECT_DOUBLE_EQ(upright->y_dpi, 150.1);
  layout.turn = 90;
  const auto turned = NativeResolution(layout, RasterLimits{});
  ASSERT_TRUE(turned.has_value());
  EXPECT_DOUBLE_EQ(turned->x_dpi, 150.1);
  EXPECT_DOUBLE_EQ(turned->y_dpi, 150);
}

TEST(NativeResolutionTest, IsLoweredToTheLimits) {
  RasterLimits limits;
  limits.max_side_px = 1500;
  const auto side = NativeResolution(Page({}), limits);
  ASSERT_TRUE(side.has_value());
  EXPECT_DOUBLE_EQ(side->dpi(), 150);
  limits.max_side_px = 32000;
  limits.max_pixels = 1'500'000;
  const auto area = NativeResolution(Page({}), limits);
  ASSERT_TRUE(area.has_value());
  EXPECT_DOUBLE_EQ(area->dpi(), 150);
}

TEST(NativeResolutionTest, RefusesWhatIsTooLarge) {
  const auto refused = [](const PageLayout& layout) { return NativeResolution(layout, RasterLimits{}).error().code; };
  EXPECT_EQ(refused(Page({At(0, 0, 480, 720, 100'000, 100'000)})), ErrorCode::kTooLarge);
  EXPECT_EQ(refused(Page({At(0, 0, 480, 720, 31'000, 31'000)})), ErrorCode::kTooLarge);
  EXPECT_EQ(refused(Page({At(0, 0, 480, 720, 40'000, 10)})), ErrorCode::kTooLarge);
  PageLayout vast;
  vast.width = vast.height = 72.0 * 1000;
  EXPECT_EQ(refused(vast), ErrorCode::kTooLarge);
}

TEST(NativeResolutionTest, APageWithoutAreaIsDamaged) {
  for (const double width :
       {0.0, -5.0, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
    PageLayout layout = Page({});
    layout.width = width;
    EXPECT_EQ(NativeResolution(layout, RasterLimits{}).error().code, ErrorCode::kDamaged) << width;
  }
}

}  // namespace
}  // namespace benchleaf
