#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// How the pixels of one side fall on those of a shorter one: each on one of them, or on it and the next.
class Shares {
 public:
  Shares(int from, int to) : first_(static_cast<std::size_t>(from)), share_(first_.size()) {
    const double factor = static_cast<double>(to) / from;
    for (int i = 0; i < from; ++i) {
      const double begin = i * factor;
      const double end = begin + factor;
      const int first = std::min(static_cast<int>(begin), to - 1);
      first_[static_cast<std::size_t>(i)] = first;
      share_[static_cast<std::size_t>(i)] =
          static_cast<float>(std::min(1.0, (std::min(end, first + 1.0) - begin) / factor));
    }
  }

  int first(int i) const { return first_[static_cast<std::size_t>(i)]; }
  // Of the pixel, on `first`; the rest of it falls on the next.
  float share(int i) const { return share_[static_cast<std::size_t>(i)]; }

 private:
  std::vector<int> first_;
  std::vector<float> share_;
};

}  // namespace

GreyImage Shrunk(const GreyImage& image, double factor) {
  if (image.empty()) {
    return image;
  }
  const auto side = [factor](int px) { return std::clamp(static_cast<int>(std::lround(factor * px)), 1, px); };
  GreyImage small(side(image.width), side(image.height));
  const Shares across(image.width, small.width);
  const Shares down(image.height, small.height);
  const auto width = static_cast<std::size_t>(small.width);
  // Sums for the row that is being filled and for the next; one more column takes the shares of nothing.
  std::vector<float> filling(width + 1);
  std::vector<float> next(width + 1);
  std::vector<float> row_sums(width + 1);
  const float area = static_cast<float>(small.width) * static_cast<float>(small.height) /
                     (static_cast<float>(image.width) * static_cast<float>(image.height));
  const auto finish = [&](int y) {
    std::uint8_t* to = small.row(y);
    for (std::size_t x = 0; x < width; ++x) {
      to[x] = static_cast<std::uint8_t>(std::min(255.0F, area * filling[x] + 0.5F));
    }
    std::swap(filling, next);
    std::fill(next.begin(), next.end(), 0.0F);
  };
  int filled = 0;
  for (int y = 0; y < image.height; ++y) {
    for (; filled < down.first(y); ++filled) {
      finish(filled);
    }
    const std::uint8_t* row = image.row(y);
    std::fill(row_sums.begin(), row_sums.end(), 0.0F);
    for (int x = 0; x < image.width; ++x) {
      const float level = row[x];
      const float here = across.share(x) * level;
      const auto first = static_cast<std::size_t>(across.first(x));
      row_sums[first] += here;
      row_sums[first + 1] += level - here;
    }
    const float share = down.share(y);
    for (std::size_t x = 0; x < width; ++x) {
      filling[x] += share * row_sums[x];
      next[x] += (1 - share) * row_sums[x];
    }
  }
  finish(filled);
  return small;
}

}  // namespace benchleaf
