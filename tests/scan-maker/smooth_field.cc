#include "scan-maker/smooth_field.h"

#include <cstddef>

namespace benchleaf::scanmaker {

SmoothField::SmoothField(int width, int height, int cell, SeededRandom& random)
    : width_(width), cell_(cell), columns_(width / cell + 2) {
  const int rows = height / cell + 2;
  knots_.resize(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows));
  for (float& knot : knots_) knot = static_cast<float>(random.Between(-1, 1));
}

void SmoothField::Row(int y, std::vector<float>& values) const {
  values.resize(static_cast<std::size_t>(width_));
  const float* above = knots_.data() + static_cast<std::ptrdiff_t>(y / cell_) * columns_;
  const float* below = above + columns_;
  const float step = 1.0F / static_cast<float>(cell_);
  const float down = static_cast<float>(y % cell_) * step;
  for (int column = 0; column * cell_ < width_; ++column) {
    const float left = above[column] + down * (below[column] - above[column]);
    const float right = above[column + 1] + down * (below[column + 1] - above[column + 1]);
    const int start = column * cell_;
    const int count = width_ - start < cell_ ? width_ - start : cell_;
    for (int i = 0; i < count; ++i) {
      values[static_cast<std::size_t>(start + i)] = left + (right - left) * step * static_cast<float>(i);
    }
  }
}

}  // namespace benchleaf::scanmaker
