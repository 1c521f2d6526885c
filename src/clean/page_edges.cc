#include "clean/page_edges.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

constexpr int kCellsAcross = 320;  // of the page's shorter side: a cell is about 8 px at 300 dpi
constexpr double kDark = 0.45;     // of the paper's level
constexpr double kDim = 0.8;       // likewise: cells that blackness only touches
constexpr double kDeepest = 0.15;  // of the page

// The page in square cells, each with its mean level.
struct Cells {
  int size = 1;  // px
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> level;

  std::size_t At(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
  }
};

Cells CellsOf(const GreyImage& scan) {
  Cells cells;
  cells.size = std::max(2, std::min(scan.width, scan.height) / kCellsAcross);
  cells.width = scan.width / cells.size;
  cells.height = scan.height / cells.size;
  cells.level.resize(static_cast<std::size_t>(cells.width) * static_cast<std::size_t>(cells.height));
  for (int y = 0; y < cells.height; ++y) {
    for (int x = 0; x < cells.width; ++x) {
      int sum = 0;
      for (int row = y * cells.size; row < (y + 1) * cells.size; ++row) {
        const std::uint8_t* from = scan.row(row) + static_cast<std::ptrdiff_t>(x) * cells.size;
        for (int i = 0; i < cells.size; ++i) {
          sum += from[i];
        }
      }
      cells.level[cells.At(x, y)] = static_cast<std::uint8_t>(sum / (cells.size * cells.size));
    }
  }
  return cells;
}

std::uint8_t PaperOf(const Cells& cells) {
  std::vector<std::uint8_t> levels = cells.level;
  const auto middle = levels.begin() + static_cast<std::ptrdiff_t>(levels.size() / 2);
  std::nth_element(levels.begin(), middle, levels.end());
  return *middle;
}

// Marks cells of which all neighbours, or those there are at the edge, are dark too: ink of letters and rules is not so
// thick.
std::vector<char> ThickDark(const Cells& cells, int limit) {
  std::vector<char> thick(cells.level.size(), 0);
  for (int y = 0; y < cells.height; ++y) {
    for (int x = 0; x < cells.width; ++x) {
      bool dark = true;
      for (int ny = std::max(0, y - 1); dark && ny <= std::min(cells.height - 1, y + 1); ++ny) {
        for (int nx = std::max(0, x - 1); dark && nx <= std::min(cells.width - 1, x + 1); ++nx) {
          dark = cells.level[cells.At(nx, ny)] < limit;
        }
      }
      thick[cells.At(x, y)] = dark ? 1 : 0;
    }
  }
  return thick;
}

// Of the marked cells those that hang together with the page's edge, no deeper than kDeepest.
std::vector<char> FromTheEdge(const Cells& cells, const std::vector<char>& marked) {
  const int deep_x = static_cast<int>(cells.width * kDeepest);
  const int deep_y = static_cast<int>(cells.height * kDeepest);
  std::vector<char> reached(marked.size(), 0);
  std::vector<std::pair<int, int>> open;
  const auto visit = [&](int x, int y) {
    if (x < 0 || y < 0 || x >= cells.width || y >= cells.height || reached[cells.At(x, y)] != 0 ||
        marked[cells.At(x, y)] == 0) {
      return;
    }
    const bool deep = x >= deep_x && x < cells.width - deep_x && y >= deep_y && y < cells.height - deep_y;
    if (!deep) {
      reached[cells.At(x, y)] = 1;
      open.emplace_back(x, y);
    }
  };
  for (int x = 0; x < cells.width; ++x) {
    visit(x, 0);
    visit(x, cells.height - 1);
  }
  for (int y = 0; y < cells.height; ++y) {
    visit(0, y);
    visit(cells.width - 1, y);
  }
  while (!open.empty()) {
    const auto [x, y] = open.back();
    open.pop_back();
    visit(x - 1, y);
    visit(x + 1, y);
    visit(x, y - 1);
    visit(x, y + 1);
  }
  return reached;
}

// Adds neighbours under the limit.
std::vector<char> Widened(const Cells& cells, const std::vector<char>& region, int limit) {
  std::vector<char> wide = region;
  for (int y = 0; y < cells.height; ++y) {
    for (int x = 0; x < cells.width; ++x) {
      if (region[cells.At(x, y)] == 0) {
        continue;
      }
      for (int ny = std::max(0, y - 1); ny <= std::min(cells.height - 1, y + 1); ++ny) {
        for (int nx = std::max(0, x - 1); nx <= std::min(cells.width - 1, x + 1); ++nx) {
          if (cells.level[cells.At(nx, ny)] < limit) {
            wide[cells.At(nx, ny)] = 1;
          }
        }
      }
    }
  }
  return wide;
}

}  // namespace

GreyImage WithoutBlackEdges(GreyImage scan) {
  const Cells cells = CellsOf(scan);
  if (cells.level.empty()) {
    return scan;
  }
  const std::uint8_t paper = PaperOf(cells);
  std::vector<char> black = FromTheEdge(cells, ThickDark(cells, static_cast<int>(kDark * paper)));
  if (std::find(black.begin(), black.end(), 1) == black.end()) {
    return scan;
  }
  // Thick cells leave out the rim; then come cells that blackness fills in part.
  black = Widened(cells, black, static_cast<int>(kDark * paper));
  black = Widened(cells, black, static_cast<int>(kDim * paper));
  black = Widened(cells, black, static_cast<int>(kDim * paper));
  for (int y = 0; y < scan.height; ++y) {
    // What the last whole cells leave over at the right and at the foot goes with them.
    const int cell_y = std::min(y / cells.size, cells.height - 1);
    std::uint8_t* row = scan.row(y);
    for (int x = 0; x < scan.width; ++x) {
      if (black[cells.At(std::min(x / cells.size, cells.width - 1), cell_y)] != 0) {
        row[x] = paper;
      }
    }
  }
  return scan;
}

}  // namespace benchleaf
