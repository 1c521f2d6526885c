#include "report/color_image.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <vector>

namespace benchleaf {

ColorImage BlankColorImage(int width, int height, std::uint8_t fill) {
  ColorImage image;
  image.width = width;
  image.height = height;
  image.pixels.assign(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * kBytesPerPixel, fill);
  return image;
}

void Blend(std::uint8_t* pixel, const Rgb& color, double share) {
  const std::array<std::uint8_t, kBytesPerPixel> target = {color.red, color.green, color.blue};
  for (std::size_t c = 0; c < kBytesPerPixel; ++c) {
    pixel[c] = static_cast<std::uint8_t>(
        std::lround(std::lerp(static_cast<double>(pixel[c]), static_cast<double>(target[c]), share)));
  }
}

ColorImage Turned(const ColorImage& image, int degrees) {
  if (degrees == 0) return image;
  const bool sideways = degrees % 180 != 0;
  ColorImage turned = BlankColorImage(sideways ? image.height : image.width, sideways ? image.width : image.height, 0);
  for (int y = 0; y < image.height; ++y) {
    for (int x = 0; x < image.width; ++x) {
      int to_x = image.width - 1 - x;  // 180
      int to_y = image.height - 1 - y;
      if (degrees == 90) {
        to_x = image.height - 1 - y;
        to_y = x;
      } else if (degrees == 270) {
        to_x = y;
        to_y = image.width - 1 - x;
      }
      std::copy_n(Pixel(image, x, y), kBytesPerPixel, Pixel(turned, to_x, to_y));
    }
  }
  return turned;
}

FractionBox Turned(const FractionBox& box, int degrees) {
  switch (degrees) {
    case 90:
      return {1 - box.y - box.height, box.x, box.height, box.width};
    case 180:
      return {1 - box.x - box.width, 1 - box.y - box.height, box.width, box.height};
    case 270:
      return {box.y, 1 - box.x - box.width, box.height, box.width};
    default:
      return box;
  }
}

namespace {

// Where a pixel of the enlarged picture lies between two pixels of the source.
struct Between {
  int first = 0;
  int second = 0;
  double weight = 0;  // of the second
};

std::vector<Between> Steps(int length, int factor) {
  std::vector<Between> steps;
  for (int i = 0; i < length * factor; ++i) {
    const double at = std::clamp((i + 0.5) / factor - 0.5, 0.0, length - 1.0);
    const int first = static_cast<int>(at);
    steps.push_back({first, std::min(first + 1, length - 1), at - first});
  }
  return steps;
}

}  // namespace

ColorImage Enlarged(const ColorImage& image, int factor) {
  assert(factor >= 1 && image.width > 0 && image.height > 0);
  if (factor == 1) return image;
  ColorImage large = BlankColorImage(image.width * factor, image.height * factor, 0);
  const std::vector<Between> columns = Steps(image.width, factor);
  const std::vector<Between> rows = Steps(image.height, factor);
  for (int y = 0; y < large.height; ++y) {
    const Between& row = rows[static_cast<std::size_t>(y)];
    for (int x = 0; x < large.width; ++x) {
      const Between& column = columns[static_cast<std::size_t>(x)];
      std::uint8_t* to = Pixel(large, x, y);
      for (std::size_t c = 0; c < kBytesPerPixel; ++c) {
        const double upper = std::lerp(static_cast<double>(Pixel(image, column.first, row.first)[c]),
                                       static_cast<double>(Pixel(image, column.second, row.first)[c]), column.weight);
        const double lower = std::lerp(static_cast<double>(Pixel(image, column.first, row.second)[c]),
                                       static_cast<double>(Pixel(image, column.second, row.second)[c]), column.weight);
        to[c] = static_cast<std::uint8_t>(std::lround(std::lerp(upper, lower, row.weight)));
      }
    }
  }
  return large;
}

}  // namespace benchleaf
