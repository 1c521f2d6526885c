// A page in coarse cells, to see what is large and dark. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_PAGE_CELLS_H_
#define BENCHLEAF_SRC_CLEAN_PAGE_CELLS_H_

#include "benchleaf/core/image.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace benchleaf {

// Square cells, rows from the top, each with its mean level. A cell is about 8 px at 300 dpi.
struct PageCells {
  int size = 1;  // px
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> level;
  std::uint8_t paper = 255;  // the middle level of all cells

  std::size_t At(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
  }
};

// For each cell whether it is meant.
using CellMask = std::vector<char>;

// Without any cells for pages of a few pixels.
PageCells CellsOf(const GreyImage& page);

// The cells with rows and columns exchanged.
PageCells Transposed(const PageCells& cells);

// The page with all marked cells in the level of paper.
GreyImage PaintedOver(GreyImage page, const PageCells& cells, const CellMask& marked);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_PAGE_CELLS_H_
