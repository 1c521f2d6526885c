#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

// For one row or column of the result: the four of the source that it is mixed of, and their shares.
struct Mix {
  std::array<int, 4> from{};
  std::array<float, 4> share{};
};

// Shares of Keys' cubic convolution with a = -1/2 (R. G. Keys, Cubic convolution interpolation for digital image
// processing, IEEE Trans. ASSP 29 (1981) 1153-1160) at `t` past the second of four neighbours.
std::array<float, 4> CubicShares(float t) {
  const float t2 = t * t;
  const float t3 = t2 * t;
  return {0.5F * (-t3 + 2 * t2 - t), 0.5F * (3 * t3 - 5 * t2 + 2), 0.5F * (-3 * t3 + 4 * t2 + t), 0.5F * (t3 - t2)};
}

std::vector<Mix> MixesFor(int source, int result) {
  std::vector<Mix> mixes(static_cast<std::size_t>(result));
  for (int i = 0; i < result; ++i) {
    // Pixels' middles: both pictures cover the same paper.
    const double at = (i + 0.5) * source / result - 0.5;
    const int second = static_cast<int>(std::floor(at));
    Mix& mix = mixes[static_cast<std::size_t>(i)];
    mix.share = CubicShares(static_cast<float>(at - second));
    for (int k = 0; k < 4; ++k) {
      mix.from[static_cast<std::size_t>(k)] = std::clamp(second - 1 + k, 0, source - 1);
    }
  }
  return mixes;
}

}  // namespace

GreyImage Enlarged(const GreyImage& image, double factor) {
  const int width = std::max(1, static_cast<int>(std::lround(image.width * factor)));
  const int height = std::max(1, static_cast<int>(std::lround(image.height * factor)));
  if (image.empty()) {
    return image;
  }
  const std::vector<Mix> across = MixesFor(image.width, width);
  const std::vector<Mix> down = MixesFor(image.height, height);
  GreyImage result(width, height);
  std::vector<float> mixed(static_cast<std::size_t>(image.width));
  for (int y = 0; y < height; ++y) {
    const Mix& rows = down[static_cast<std::size_t>(y)];
    const std::array<const std::uint8_t*, 4> row = {image.row(rows.from[0]), image.row(rows.from[1]),
                                                    image.row(rows.from[2]), image.row(rows.from[3])};
    for (std::size_t x = 0; x < mixed.size(); ++x) {
      mixed[x] = rows.share[0] * static_cast<float>(row[0][x]) + rows.share[1] * static_cast<float>(row[1][x]) +
                 rows.share[2] * static_cast<float>(row[2][x]) + rows.share[3] * static_cast<float>(row[3][x]);
    }
    std::uint8_t* out = result.row(y);
    for (int x = 0; x < width; ++x) {
      const Mix& mix = across[static_cast<std::size_t>(x)];
      float level = 0.5F;
      for (std::size_t k = 0; k < 4; ++k) {
        level += mix.share[k] * mixed[static_cast<std::size_t>(mix.from[k])];
      }
      out[x] = static_cast<std::uint8_t>(std::clamp(level, 0.0F, 255.0F));
    }
  }
  return result;
}

}  // namespace benchleaf
