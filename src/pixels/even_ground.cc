#include "pixels/pix.h"

#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace benchleaf {
namespace {

// The ground is smooth, so a quarter of the page's size tells it as well as the whole does.
constexpr int kShrink = 4;

// The mean of each 4 x 4 px; what is left over at the right and at the foot is dropped.
GreyImage Shrunk(const GreyImage& image) {
  GreyImage small(image.width / kShrink, image.height / kShrink);
  std::vector<std::uint32_t> sums(static_cast<std::size_t>(small.width) * kShrink);
  for (int y = 0; y < small.height; ++y) {
    const std::uint8_t* rows[kShrink] = {image.row(kShrink * y), image.row(kShrink * y + 1), image.row(kShrink * y + 2),
                                         image.row(kShrink * y + 3)};
    for (std::size_t x = 0; x < sums.size(); ++x) {
      sums[x] = std::uint32_t{rows[0][x]} + rows[1][x] + rows[2][x] + rows[3][x];
    }
    std::uint8_t* to = small.row(y);
    for (int x = 0; x < small.width; ++x) {
      const std::uint32_t* four = sums.data() + static_cast<std::ptrdiff_t>(kShrink) * x;
      to[x] = static_cast<std::uint8_t>((four[0] + four[1] + four[2] + four[3]) / (kShrink * kShrink));
    }
  }
  return small;
}

// Of the page's usual ground. Where it is darker, dividing by it would make ink of the noise.
constexpr double kDeepestShade = 0.7;

std::uint8_t Middle(std::vector<std::uint8_t> levels) {
  const auto middle = levels.begin() + static_cast<std::ptrdiff_t>(levels.size() / 2);
  std::nth_element(levels.begin(), middle, levels.end());
  return *middle;
}

// What a level becomes where the paper has a certain level.
using Division = std::array<std::uint8_t, 256>;

// What is darker than the paper by the level `least`, or by the paper's own where that is more, becomes black.
std::vector<Division> Divisions(int least) {
  std::vector<Division> by_paper(256);
  for (int paper = 0; paper < 256; ++paper) {
    for (int level = 0; level < 256; ++level) {
      by_paper[static_cast<std::size_t>(paper)][static_cast<std::size_t>(level)] =
          static_cast<std::uint8_t>(std::clamp(255 - (paper - level) * 255 / std::max(paper, least), 0, 255));
    }
  }
  return by_paper;
}

}  // namespace

GreyImage WithEvenGround(GreyImage image, int ground_px) {
  if (image.width < 16 * kShrink || image.height < 16 * kShrink) {
    return image;
  }
  const PixHandle small = ToPix(Shrunk(image));
  const int window = std::max(3, ground_px / kShrink) | 1;
  const PixHandle calm(small ? pixMedianFilter(small.get(), 3, 3) : nullptr);
  const PixHandle filled(calm ? pixCloseGray(calm.get(), window, window) : nullptr);
  const PixHandle ground(filled ? pixBlockconv(filled.get(), 8, 8) : nullptr);
  if (!ground) {
    return image;
  }
  const GreyImage paper = ToGrey(ground.get());
  const int least = std::max(1, static_cast<int>(kDeepestShade * Middle(paper.pixels)));
  const std::vector<Division> divided = Divisions(least);
  for (int y = 0; y < image.height; ++y) {
    const std::uint8_t* paper_row = paper.row(std::min(y / kShrink, paper.height - 1));
    std::uint8_t* row = image.row(y);
    for (int begin = 0; begin < image.width; begin += kShrink) {
      const Division& division = divided[paper_row[std::min(begin / kShrink, paper.width - 1)]];
      const int end = std::min(begin + kShrink, image.width);
      for (int x = begin; x < end; ++x) {
        row[x] = division[row[x]];
      }
    }
  }
  return image;
}

}  // namespace benchleaf
