#include "scan-maker/resampling.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace benchleaf::scanmaker {
namespace {

// Weights of a Gaussian from its centre outwards; both sides together sum up to 65536.
std::vector<std::uint32_t> Weights(double sigma) {
  const int radius = static_cast<int>(std::ceil(2.5 * sigma));
  std::vector<double> exact;
  double sum = 0;
  for (int i = 0; i <= radius; ++i) {
    exact.push_back(std::exp(-i * i / (2 * sigma * sigma)));
    sum += (i == 0 ? 1 : 2) * exact.back();
  }
  std::vector<std::uint32_t> weights;
  std::uint32_t outer = 0;
  for (const double weight : exact) {
    weights.push_back(static_cast<std::uint32_t>(std::lround(65536 * weight / sum)));
    if (weights.size() > 1) {
      outer += 2 * weights.back();
    }
  }
  weights[0] = 65536 - outer;
  return weights;
}

// `line` holds the row with `radius` repeated pixels before and after it.
void BlurRow(const std::vector<std::uint8_t>& line, const std::vector<std::uint32_t>& weights,
             std::vector<std::uint32_t>& sums, std::uint8_t* out) {
  const std::size_t radius = weights.size() - 1;
  const std::size_t width = sums.size();
  const std::uint8_t* centre = line.data() + radius;
  for (std::size_t x = 0; x < width; ++x) sums[x] = 32768 + weights[0] * centre[x];
  for (std::size_t i = 1; i <= radius; ++i) {
    const std::uint8_t* before = centre - i;
    const std::uint8_t* after = centre + i;
    for (std::size_t x = 0; x < width; ++x) sums[x] += weights[i] * (std::uint32_t{before[x]} + after[x]);
  }
  for (std::size_t x = 0; x < width; ++x) out[x] = static_cast<std::uint8_t>(sums[x] >> 16);
}

constexpr int kFractionBits = 20;  // of a source place; products with a whole page's width fit in 64 bits
constexpr std::int64_t kOne = std::int64_t{1} << kFractionBits;

std::int64_t Fixed(double value) { return std::llround(value * static_cast<double>(kOne)); }

}  // namespace

GreyImage Blurred(const GreyImage& image, double sigma) {
  const std::vector<std::uint32_t> weights = Weights(sigma);
  const int radius = static_cast<int>(weights.size()) - 1;
  const auto width = static_cast<std::size_t>(image.width);
  std::vector<std::uint32_t> sums(width);

  GreyImage across(image.width, image.height);
  std::vector<std::uint8_t> line(width + 2 * static_cast<std::size_t>(radius));
  for (int y = 0; y < image.height; ++y) {
    const std::uint8_t* row = image.row(y);
    std::fill_n(line.begin(), radius, row[0]);
    std::copy_n(row, width, line.begin() + radius);
    std::fill_n(line.end() - radius, radius, row[width - 1]);
    BlurRow(line, weights, sums, across.row(y));
  }

  GreyImage blurred(image.width, image.height);
  for (int y = 0; y < image.height; ++y) {
    std::fill(sums.begin(), sums.end(), 32768);
    for (int i = -radius; i <= radius; ++i) {
      const std::uint32_t weight = weights[static_cast<std::size_t>(std::abs(i))];
      const std::uint8_t* row = across.row(std::clamp(y + i, 0, image.height - 1));
      for (std::size_t x = 0; x < width; ++x) sums[x] += weight * row[x];
    }
    std::uint8_t* out = blurred.row(y);
    for (std::size_t x = 0; x < width; ++x) out[x] = static_cast<std::uint8_t>(sums[x] >> 16);
  }
  return blurred;
}

AffineMap AffineMap::Inverse() const {
  const double determinant = xx * yy - xy * yx;
  AffineMap inverse{yy / determinant, -xy / determinant, 0, -yx / determinant, xx / determinant, 0};
  inverse.x0 = -(inverse.xx * x0 + inverse.xy * y0);
  inverse.y0 = -(inverse.yx * x0 + inverse.yy * y0);
  return inverse;
}

GreyImage Resampled(const GreyImage& image, const AffineMap& to_source, int width, int height) {
  GreyImage result(width, height);
  const std::int64_t step_x = Fixed(to_source.xx);
  const std::int64_t step_y = Fixed(to_source.yx);
  for (int y = 0; y < height; ++y) {
    std::int64_t at_x = Fixed(to_source.xy * y + to_source.x0);
    std::int64_t at_y = Fixed(to_source.yy * y + to_source.y0);
    std::uint8_t* out = result.row(y);
    for (int x = 0; x < width; ++x, at_x += step_x, at_y += step_y) {
      const std::int64_t left = at_x >> kFractionBits;
      const std::int64_t top = at_y >> kFractionBits;
      if (left < 0 || top < 0 || left + 1 >= image.width || top + 1 >= image.height) {
        continue;
      }
      const std::int64_t right_share = (at_x & (kOne - 1)) >> (kFractionBits - 8);
      const std::int64_t low_share = (at_y & (kOne - 1)) >> (kFractionBits - 8);
      const std::uint8_t* upper = image.row(static_cast<int>(top)) + left;
      const std::uint8_t* lower = upper + image.width;
      const std::int64_t above = upper[0] * (256 - right_share) + upper[1] * right_share;
      const std::int64_t below = lower[0] * (256 - right_share) + lower[1] * right_share;
      out[x] = static_cast<std::uint8_t>((above * (256 - low_share) + below * low_share + 32768) >> 16);
    }
  }
  return result;
}

}  // namespace benchleaf::scanmaker
