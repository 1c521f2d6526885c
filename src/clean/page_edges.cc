#include "clean/page_edges.h"

#include "clean/binding.h"
#include "clean/page_cells.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

constexpr double kDark = 0.45;     // of the paper's level
constexpr double kDim = 0.8;       // likewise: cells that blackness only touches
constexpr double kDeepest = 0.15;  // of the page

// Marks cells of which all neighbours, or those there are at the edge, are dark too: ink of letters and rules is not so
// thick.
CellMask ThickDark(const PageCells& cells, int limit) {
  CellMask thick(cells.level.size(), 0);
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
CellMask FromTheEdge(const PageCells& cells, const CellMask& marked) {
  const int deep_x = static_cast<int>(cells.width * kDeepest);
  const int deep_y = static_cast<int>(cells.height * kDeepest);
  CellMask reached(marked.size(), 0);
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
CellMask Widened(const PageCells& cells, const CellMask& region, int limit) {
  CellMask wide = region;
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

CellMask BlackEdges(const PageCells& cells) {
  CellMask black = FromTheEdge(cells, ThickDark(cells, static_cast<int>(kDark * cells.paper)));
  if (std::find(black.begin(), black.end(), 1) == black.end()) {
    return {};
  }
  // Thick cells leave out the rim; then come cells that blackness fills in part.
  black = Widened(cells, black, static_cast<int>(kDark * cells.paper));
  black = Widened(cells, black, static_cast<int>(kDim * cells.paper));
  return Widened(cells, black, static_cast<int>(kDim * cells.paper));
}

}  // namespace

GreyImage WithoutSurroundings(GreyImage scan) {
  const PageCells cells = CellsOf(scan);
  if (cells.level.empty()) {
    return scan;
  }
  CellMask marked = BlackEdges(cells);
  const auto add = [&](const CellMask& more) {
    if (marked.empty()) {
      marked = more;
    }
    for (std::size_t i = 0; i < more.size(); ++i) {
      marked[i] = static_cast<char>(marked[i] | more[i]);
    }
  };
  add(BindingShadows(cells));
  // A page that was bound at its head or foot, or lies on its side.
  const PageCells turned = Transposed(cells);
  if (const CellMask shadows = BindingShadows(turned); !shadows.empty()) {
    CellMask upright(shadows.size());
    for (int y = 0; y < cells.height; ++y) {
      for (int x = 0; x < cells.width; ++x) {
        upright[cells.At(x, y)] = shadows[turned.At(y, x)];
      }
    }
    add(upright);
  }
  return marked.empty() ? scan : PaintedOver(std::move(scan), cells, marked);
}

}  // namespace benchleaf
