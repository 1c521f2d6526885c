#include "raster/pixel_fit.h"

#include <gtest/gtest.h>

#include <cmath>

namespace benchleaf {
namespace {

// The pixels that the renderer draws a picture on, from one edge to the other.
int Drawn(double first, double last) { return static_cast<int>(std::floor(last) + 1 - std::floor(first)); }

TEST(PixelFitTest, FindsAFactorAtWhichThePictureIsNotStretched) {
  const struct {
    double first;
    double last;
    int fewest;
    const char* reason;
  } kCases[] = {
      {0, 999.99, 1000, "already fits"},
      {0, 1000, 999, "both edges on pixels' edges"},
      {10.3, 1010.3, 1000, "lies across pixels"},
      {10.999, 1010.999, 1000, "begins at the end of a pixel"},
      {-0.002, 1000.002, 1000, "a hair over the page"},
      {-1e-13, 1000, 999, "begins on a pixel's edge, as far as roundings tell"},
      {1e-13, 1000, 999, "likewise, on its other side"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    // A picture of 1000 x 1000 px whose rows lie between the edges.
    const PlacedPicture device{1000, 1000, {c.last - c.first, 0, 0, -(c.last - c.first), c.first, c.last}};
    const PixelFit fit = FitToPixels(device);
    EXPECT_LE(fit.x, 1);
    EXPECT_GE(fit.x, 0.998);
    EXPECT_LE(Drawn(c.first * fit.x, c.last * fit.x), 1000);
    EXPECT_GE(Drawn(c.first * fit.x, c.last * fit.x), c.fewest);
    EXPECT_LE(Drawn(c.first * fit.y, c.last * fit.y), 1000);
    EXPECT_GE(Drawn(c.first * fit.y, c.last * fit.y), c.fewest);
  }
}

TEST(PixelFitTest, MeasuresSidewaysPicturesByTheirOwnRows) {
  // 200 x 100 px that stand on 100 x 200 pixels.
  const PixelFit fit = FitToPixels({200, 100, {0, 199.99, 99.99, 0, 0, 0}});
  EXPECT_DOUBLE_EQ(fit.x, 1);
  EXPECT_DOUBLE_EQ(fit.y, 1);
}

TEST(DeviceMatrixTest, PutsTheShownPagesCornersWhereTheyBelong) {
  PageLayout layout;
  layout.left = 10;
  layout.bottom = 20;
  layout.width = 72;
  layout.height = 144;
  const struct {
    int turn;
    double x;  // where the page's lower left corner goes, at 100 dpi
    double y;
  } kCases[] = {{0, 0, 200}, {90, 0, 0}, {180, 100, 0}, {270, 200, 100}};
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.turn);
    layout.turn = c.turn;
    const Affine m = DeviceMatrix(layout, 100, 100);
    EXPECT_NEAR(m.a * 10 + m.c * 20 + m.e, c.x, 1e-9);
    EXPECT_NEAR(m.b * 10 + m.d * 20 + m.f, c.y, 1e-9);
  }
}

}  // namespace
}  // namespace benchleaf
