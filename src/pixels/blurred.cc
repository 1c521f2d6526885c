#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace benchleaf {

GreyImage Blurred(GreyImage image, int radius) {
  if (radius < 1 || image.width <= 2 * radius || image.height <= 2 * radius) {
    return image;
  }
  // Works in the picture's own place: `kept` holds the rows of a window as they were.
  const int window = 2 * radius + 1;
  const auto width = static_cast<std::size_t>(image.width);
  std::vector<std::vector<std::uint8_t>> kept(static_cast<std::size_t>(window));
  std::vector<std::int32_t> columns(width);
  int rows = 0;
  const auto add = [&](const std::vector<std::uint8_t>& row, int sign) {
    for (std::size_t x = 0; x < width; ++x) {
      columns[x] += sign * row[x];
    }
    rows += sign;
  };
  const auto take = [&](int y) {
    std::vector<std::uint8_t>& row = kept[static_cast<std::size_t>(y % window)];
    row.assign(image.row(y), image.row(y) + image.width);
    add(row, 1);
  };
  for (int y = 0; y < radius; ++y) {
    take(y);
  }
  for (int y = 0; y < image.height; ++y) {
    if (y > radius) {
      add(kept[static_cast<std::size_t>((y - radius - 1) % window)], -1);
    }
    if (y + radius < image.height) {
      take(y + radius);
    }
    std::uint8_t* to = image.row(y);
    std::int32_t sum = 0;
    for (int x = -radius; x < image.width; ++x) {
      sum += x + radius < image.width ? columns[static_cast<std::size_t>(x + radius)] : 0;
      if (x < 0) {
        continue;
      }
      sum -= x > radius ? columns[static_cast<std::size_t>(x - radius - 1)] : 0;
      const int count = rows * (std::min(x + radius, image.width - 1) - std::max(x - radius, 0) + 1);
      to[x] = static_cast<std::uint8_t>((sum + count / 2) / count);
    }
  }
  return image;
}

}  // namespace benchleaf
