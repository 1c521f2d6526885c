#include "scan-maker/pen_strokes.h"

#include <algorithm>
#include <cmath>

namespace benchleaf::scanmaker {

void Dab(GreyImage& image, double x, double y, double radius, std::uint8_t level) {
  for (int py = static_cast<int>(y - radius); py <= static_cast<int>(y + radius); ++py) {
    for (int px = static_cast<int>(x - radius); px <= static_cast<int>(x + radius); ++px) {
      if (px >= 0 && py >= 0 && px < image.width && py < image.height && std::hypot(px - x, py - y) <= radius) {
        image.row(py)[px] = std::min(image.row(py)[px], level);
      }
    }
  }
}

void DrawDabs(GreyImage& image, const Stroke& stroke, double step, double radius, std::uint8_t level) {
  const double length = std::hypot(stroke.to_x - stroke.x, stroke.to_y - stroke.y);
  const int dabs = static_cast<int>(length / step);
  for (int i = 0; i <= dabs; ++i) {
    const double share = i * step / length;
    Dab(image, stroke.x + share * (stroke.to_x - stroke.x), stroke.y + share * (stroke.to_y - stroke.y), radius, level);
  }
}

}  // namespace benchleaf::scanmaker
