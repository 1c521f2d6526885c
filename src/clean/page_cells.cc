#include "clean/page_cells.h"

#include <algorithm>

namespace benchleaf {
namespace {

constexpr int kCellsAcross = 320;  // of the page's shorter side

std::uint8_t Middle(std::vector<std::uint8_t> levels) {
  const auto middle = levels.begin() + static_cast<std::ptrdiff_t>(levels.size() / 2);
  std::nth_element(levels.begin(), middle, levels.end());
  return *middle;
}

}  // namespace

PageCells CellsOf(const GreyImage& page) {
  PageCells cells;
  cells.size = std::max(2, std::min(page.width, page.height) / kCellsAcross);
  cells.width = page.width / cells.size;
  cells.height = page.height / cells.size;
  cells.level.resize(static_cast<std::size_t>(cells.width) * static_cast<std::size_t>(cells.height));
  for (int y = 0; y < cells.height; ++y) {
    for (int x = 0; x < cells.width; ++x) {
      int sum = 0;
      for (int row = y * cells.size; row < (y + 1) * cells.size; ++row) {
        const std::uint8_t* from = page.row(row) + static_cast<std::ptrdiff_t>(x) * cells.size;
        for (int i = 0; i < cells.size; ++i) {
          sum += from[i];
        }
      }
      cells.level[cells.At(x, y)] = static_cast<std::uint8_t>(sum / (cells.size * cells.size));
    }
  }
  if (!cells.level.empty()) {
    cells.paper = Middle(cells.level);
  }
  return cells;
}

PageCells Transposed(const PageCells& cells) {
  PageCells turned = cells;
  turned.width = cells.height;
  turned.height = cells.width;
  for (int y = 0; y < cells.height; ++y) {
    for (int x = 0; x < cells.width; ++x) {
      turned.level[turned.At(y, x)] = cells.level[cells.At(x, y)];
    }
  }
  return turned;
}

GreyImage PaintedOver(GreyImage page, const PageCells& cells, const CellMask& marked) {
  for (int y = 0; y < page.height; ++y) {
    // What the last whole cells leave over at the right and at the foot goes with them.
    const int cell_y = std::min(y / cells.size, cells.height - 1);
    std::uint8_t* row = page.row(y);
    for (int x = 0; x < page.width; ++x) {
      if (marked[cells.At(std::min(x / cells.size, cells.width - 1), cell_y)] != 0) {
        row[x] = cells.paper;
      }
    }
  }
  return page;
}

}  // namespace benchleaf
