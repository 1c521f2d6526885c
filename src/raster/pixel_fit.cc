#include "raster/pixel_fit.h"

#include <algorithm>
#include <cmath>

namespace benchleaf {
namespace {

// Roundings differ by far less, and scans are placed with far more, than this part of a pixel.
constexpr double kUncertain = 1e-6;
constexpr double kHair = 0.01;  // px

bool IsUncertain(double edge) { return std::abs(edge - std::round(edge)) < kUncertain; }

// The factor for one axis, along which `pixels` of the picture lie between two edges on the page.
double FitAxis(double first, double last, int pixels) {
  const auto covers = [&](double factor) { return std::floor(last * factor) + 1 - std::floor(first * factor); };
  const double span = last - first;
  // The edges were computed with the renderer's roundings: this holds even where they lie on a pixel's edge.
  if (covers(1) == pixels) {
    return 1;
  }
  constexpr int kSteps = 20;
  for (int i = 0; i < kSteps; ++i) {
    const double factor = (pixels - kHair - static_cast<double>(i) / kSteps) / span;
    if (covers(factor) == pixels && !IsUncertain(first * factor) && !IsUncertain(last * factor)) {
      return factor;
    }
  }
  // The first edge lies on a pixel's edge, on either side of it: with a pixel less the picture is never stretched.
  return (pixels - 1 - kHair) / span;
}

}  // namespace

Affine DeviceMatrix(const PageLayout& layout, double x_dpi, double y_dpi) {
  constexpr double kPointsPerInch = 72;
  const double x = x_dpi / kPointsPerInch;
  const double y = y_dpi / kPointsPerInch;
  const double right = layout.left + layout.width;
  const double top = layout.bottom + layout.height;
  switch (layout.turn) {
    case 90:
      return {0, y, x, 0, -x * layout.bottom, -y * layout.left};
    case 180:
      return {-x, 0, 0, y, x * right, -y * layout.bottom};
    case 270:
      return {0, -y, -x, 0, x * top, y * right};
    default:
      return {x, 0, 0, -y, -x * layout.left, y * top};
  }
}

PixelFit FitToPixels(const PlacedPicture& device) {
  const Affine& m = device.placement;
  const bool lies = std::abs(m.b) > std::abs(m.a);
  // The renderer turns the unit square over first; in its order of adding up.
  const double x_one = m.c + m.e;
  const double x_other = (lies ? -m.c : m.a) + x_one;
  const double y_one = m.d + m.f;
  const double y_other = (lies ? m.b : -m.d) + y_one;
  return {FitAxis(std::min(x_one, x_other), std::max(x_one, x_other), lies ? device.height : device.width),
          FitAxis(std::min(y_one, y_other), std::max(y_one, y_other), lies ? device.width : device.height)};
}

}  // namespace benchleaf
