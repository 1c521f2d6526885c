#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

// Sums over the rows of a window, for each column of the picture and for as many to either side as a window reaches
// out; beyond its edges the picture is mirrored. So a threshold needs no further picture beside the one that it is for.
class ColumnSums {
 public:
  // The window lies about row 0.
  ColumnSums(const GreyImage& image, int half_window)
      : image_(image),
        half_(half_window),
        sums_(static_cast<std::size_t>(image.width + 2 * half_window)),
        squares_(sums_.size()) {
    for (int y = -half_; y <= half_; ++y) {
      Add(y, 1);
    }
    Mirror(sums_);
    Mirror(squares_);
  }

  // Moves the window to row `y`.
  // REQUIRES: `y` is the row where it lies, or the next one.
  void MoveTo(int y) {
    if (y == row_) {
      return;
    }
    row_ = y;
    Add(y - half_ - 1, -1);
    Add(y + half_, 1);
    Mirror(sums_);
    Mirror(squares_);
  }

  // From the column `half_window` to the left of the picture on.
  const std::vector<std::int32_t>& sums() const { return sums_; }
  const std::vector<std::int32_t>& squares() const { return squares_; }

 private:
  static int Mirrored(int at, int size) { return at < 0 ? -at - 1 : at >= size ? 2 * size - 1 - at : at; }

  void Add(int y, int sign) {
    const std::uint8_t* row = image_.row(Mirrored(y, image_.height));
    std::int32_t* sums = sums_.data() + half_;
    std::int32_t* squares = squares_.data() + half_;
    for (int x = 0; x < image_.width; ++x) {
      const std::int32_t level = row[x];
      sums[x] += sign * level;
      squares[x] += sign * level * level;
    }
  }

  void Mirror(std::vector<std::int32_t>& columns) const {
    const auto first = columns.begin() + half_;
    const auto end = columns.end() - half_;
    std::reverse_copy(first, first + half_, columns.begin());
    std::reverse_copy(end - half_, end, end);
  }

  const GreyImage& image_;
  int half_;
  int row_ = 0;
  std::vector<std::int32_t> sums_;
  std::vector<std::int32_t> squares_;
};

// Sums over as many columns as a window has, for each pixel of a row.
void AlongRow(const std::vector<std::int32_t>& columns, int window, std::vector<std::int32_t>& sums) {
  std::int32_t sum = 0;
  for (int i = 0; i < window; ++i) {
    sum += columns[static_cast<std::size_t>(i)];
  }
  const std::int32_t* leaving = columns.data();
  const std::int32_t* coming = columns.data() + window;
  sums[0] = sum;
  for (std::size_t x = 1; x < sums.size(); ++x) {
    sum += coming[x - 1] - leaving[x - 1];
    sums[x] = sum;
  }
}

}  // namespace

InkImage Binarized(const GreyImage& image, int half_window, double k) {
  InkImage ink(image.width, image.height);
  if (image.width < 2 * half_window + 3 || image.height < 2 * half_window + 3) {
    return ink;
  }
  const int window = 2 * half_window + 1;
  const float share = 1.0F / static_cast<float>(window * window);
  const auto plain = static_cast<float>(1 - k);
  const auto spread = static_cast<float>(k / 128);
  ColumnSums columns(image, half_window);
  std::vector<std::int32_t> sums(static_cast<std::size_t>(image.width));
  std::vector<std::int32_t> squares(sums.size());
  std::vector<std::uint8_t> is_ink(sums.size());
  for (int y = 0; y < image.height; ++y) {
    columns.MoveTo(y);
    AlongRow(columns.sums(), window, sums);
    AlongRow(columns.squares(), window, squares);
    const std::uint8_t* row = image.row(y);
    for (std::size_t x = 0; x < sums.size(); ++x) {
      // Mean and threshold are whole levels. A level is under the threshold when even the next one is not above
      // mean * (plain + spread * deviation); that is solved for the variance, which spares a root.
      const auto mean = static_cast<float>(static_cast<std::int32_t>(share * static_cast<float>(sums[x])));
      const float variance = share * static_cast<float>(squares[x]) - mean * mean;
      const float needed = static_cast<float>(row[x] + 1) - mean * plain;
      const float reach = mean * spread;
      is_ink[x] = static_cast<std::uint8_t>((needed <= 0) | (needed * needed <= reach * reach * variance));
    }
    ink.row(y).Take(is_ink.data(), image.width);
  }
  return ink;
}

}  // namespace benchleaf
