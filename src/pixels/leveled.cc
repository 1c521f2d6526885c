#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

constexpr int kParts = 16;  // of a pixel, to which places are rounded

// The mean of four pixels that meet, by the areas of them that a pixel covers which lies `x` parts to the right of the
// first and `y` parts under it.
std::uint8_t Between(const std::uint8_t* upper, const std::uint8_t* lower, int x, int y) {
  const int above = (kParts - x) * upper[0] + x * upper[1];
  const int below = (kParts - x) * lower[0] + x * lower[1];
  return static_cast<std::uint8_t>(((kParts - y) * above + y * below + kParts * kParts / 2) / (kParts * kParts));
}

}  // namespace

GreyImage Leveled(GreyImage image, double degrees) {
  constexpr std::uint8_t kPaper = 255;
  const double radians = degrees * std::numbers::pi / 180;
  const double sine = kParts * std::sin(radians);
  const double cosine = kParts * std::cos(radians);
  const int middle_x = image.width / 2;
  const int middle_y = image.height / 2;
  // The picture is turned in its own place: rows that are overwritten are kept for as long as later rows ask for them.
  const int reach = static_cast<int>(std::ceil(std::abs(std::sin(radians)) * (middle_x + 1) +
                                               (1 - std::cos(radians)) * (middle_y + 1))) +
                    2;
  std::vector<std::vector<std::uint8_t>> kept(static_cast<std::size_t>(std::min(reach, image.height)) + 1);
  std::vector<const std::uint8_t*> rows(static_cast<std::size_t>(image.height));
  for (int y = 0; y < image.height; ++y) {
    rows[static_cast<std::size_t>(y)] = image.row(y);
  }
  for (int y = 0; y < image.height; ++y) {
    std::uint8_t* row = image.row(y);
    std::vector<std::uint8_t>& copy = kept[static_cast<std::size_t>(y) % kept.size()];
    copy.assign(row, row + image.width);
    rows[static_cast<std::size_t>(y)] = copy.data();
    const int down = y - middle_y;
    for (int x = 0; x < image.width; ++x) {
      const int right = x - middle_x;
      const int from_x = static_cast<int>(right * cosine + down * sine);
      const int from_y = static_cast<int>(down * cosine - right * sine);
      const int whole_x = middle_x + (from_x >> 4);
      const int whole_y = middle_y + (from_y >> 4);
      if (whole_x < 0 || whole_y < 0 || whole_x > image.width - 2 || whole_y > image.height - 2) {
        row[x] = kPaper;
        continue;
      }
      const std::uint8_t* upper = rows[static_cast<std::size_t>(whole_y)] + whole_x;
      const std::uint8_t* lower = rows[static_cast<std::size_t>(whole_y) + 1] + whole_x;
      row[x] = Between(upper, lower, from_x & (kParts - 1), from_y & (kParts - 1));
    }
  }
  return image;
}

}  // namespace benchleaf
