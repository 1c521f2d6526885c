#include "clean/glyphs.h"

#include "clean/disjoint_sets.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

// A component, or several that were put together.
struct Piece {
  Box box;
  int ink = 0;
  std::size_t component = 0;
};

// Too small for a letter, too large for dust.
bool IsFragment(const Piece& piece, double cap) {
  const int larger = std::max(piece.box.width, piece.box.height);
  return larger >= 0.12 * cap && larger <= 1.3 * cap && piece.ink >= 6;
}

// How far two boxes lie apart, px; 0 where they overlap.
int Distance(const Box& a, const Box& b) {
  const int along = std::max(a.x, b.x) - std::min(a.right(), b.right());
  const int across = std::max(a.y, b.y) - std::min(a.bottom(), b.bottom());
  return std::max({along, across, 0});
}

struct Pair {
  int distance = 0;
  std::size_t fragment = 0;
  std::size_t other = 0;
};

// Pairs of a fragment and a piece at most `reach` px from it, the nearest first.
std::vector<Pair> NearPairs(const std::vector<Piece>& pieces, const std::vector<bool>& is_fragment, double cap,
                            int reach) {
  const int cell = std::max(1, static_cast<int>(cap));
  std::map<std::pair<int, int>, std::vector<std::size_t>> cells;
  const auto for_cells = [&](const Box& box, int margin, const auto& each) {
    for (int y = (box.y - margin) / cell; y <= (box.bottom() + margin) / cell; ++y) {
      for (int x = (box.x - margin) / cell; x <= (box.right() + margin) / cell; ++x) each(std::pair(y, x));
    }
  };
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    for_cells(pieces[i].box, 0, [&](std::pair<int, int> at) { cells[at].push_back(i); });
  }
  std::vector<Pair> pairs;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (!is_fragment[i]) {
      continue;
    }
    for_cells(pieces[i].box, reach, [&](std::pair<int, int> at) {
      const auto found = cells.find(at);
      if (found == cells.end()) {
        return;
      }
      for (const std::size_t other : found->second) {
        const int distance = Distance(pieces[i].box, pieces[other].box);
        if (other != i && distance <= reach) {
          pairs.push_back({distance, i, other});
        }
      }
    });
  }
  std::sort(pairs.begin(), pairs.end(), [](const Pair& a, const Pair& b) {
    return std::tuple(a.distance, a.fragment, a.other) < std::tuple(b.distance, b.fragment, b.other);
  });
  return pairs;
}

}  // namespace

Box AlongText(const Box& box, bool standing) { return standing ? Box{box.y, box.x, box.height, box.width} : box; }

bool IsTextSized(const Box& box, int ink, double cap) {
  // A letter leaves ink of a stroke's width all over its box; frames and long thin arcs leave much less.
  const double area = 1.0 * box.width * box.height;
  return box.height >= 0.5 * cap && box.height <= 1.7 * cap && box.width <= 7 * cap &&
         (box.width <= 2 * cap || ink >= 0.1 * area);
}

std::vector<Glyph> FindGlyphs(const Components& components, double cap, bool standing) {
  constexpr double kReach = 0.2;     // of a capital: further apart than the pieces of a broken stroke
  constexpr double kHighest = 1.25;  // of what has been put together
  std::vector<Piece> pieces;
  std::vector<bool> is_fragment;
  for (std::size_t i = 0; i < components.items.size(); ++i) {
    const Component& component = components.items[i];
    const Piece piece{AlongText(component.box, standing), component.ink, i};
    const bool text_sized = IsTextSized(piece.box, piece.ink, cap);
    if (text_sized || IsFragment(piece, cap)) {
      pieces.push_back(piece);
      is_fragment.push_back(!text_sized);
    }
  }
  DisjointSets sets;
  sets.Grow(pieces.size());
  std::vector<Piece> whole = pieces;  // of each set, at its least member
  for (const Pair& pair : NearPairs(pieces, is_fragment, cap, static_cast<int>(kReach * cap))) {
    const std::size_t a = sets.Find(pair.fragment);
    const std::size_t b = sets.Find(pair.other);
    const Box box = Union(whole[a].box, whole[b].box);
    if (a == b || box.height > std::max({kHighest * cap, 1.0 * whole[a].box.height, 1.0 * whole[b].box.height}) ||
        box.width > 7 * cap) {
      continue;
    }
    const int ink = whole[a].ink + whole[b].ink;
    sets.Join(a, b);
    whole[std::min(a, b)] = {box, ink, 0};
  }
  std::map<std::size_t, Glyph> glyphs;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const std::size_t root = sets.Find(i);
    if (IsTextSized(whole[root].box, whole[root].ink, cap)) {
      glyphs[root].box = whole[root].box;
      glyphs[root].components.push_back(pieces[i].component);
    }
  }
  std::vector<Glyph> found;
  found.reserve(glyphs.size());
  for (auto& [root, glyph] : glyphs) found.push_back(std::move(glyph));
  return found;
}

}  // namespace benchleaf
