#include "scan-maker/scan_shade.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace benchleaf::scanmaker {
namespace {

// The light that is left at `distance` px from the deepest line of a shadow `width` px wide.
double LightAt(double distance, double width) {
  const double depth = std::clamp(1 - distance / width, 0.0, 1.0);
  return 1 - 0.75 * depth * depth;
}

void Shade(std::uint8_t& pixel, double light, bool one_bit) {
  const double level = pixel * light;
  pixel = static_cast<std::uint8_t>(!one_bit ? level : level < 128 ? 0 : 255);
}

}  // namespace

void ShadeEdges(ScannedPage& scan, bool one_bit) {
  constexpr double kCurlInches = 0.5;
  const double width = kCurlInches * scan.dpi;
  GreyImage& image = scan.image;
  for (int y = 0; y < image.height; ++y) {
    for (int x = 0; x < image.width; ++x) {
      const int edge = std::min({x, image.width - 1 - x, image.height - 1 - y});
      Shade(image.row(y)[x], LightAt(edge, width), one_bit);
    }
  }
}

void ShadeBinding(ScannedPage& scan, double place, double width_in, bool one_bit) {
  const double width = width_in * scan.dpi;
  GreyImage& image = scan.image;
  const int middle = static_cast<int>(std::lround(place * image.width));
  const int reach = static_cast<int>(std::ceil(width));
  for (int y = 0; y < image.height; ++y) {
    for (int x = std::max(0, middle - reach); x < std::min(image.width, middle + reach); ++x) {
      Shade(image.row(y)[x], LightAt(std::abs(x - middle), width), one_bit);
    }
  }
}

}  // namespace benchleaf::scanmaker
