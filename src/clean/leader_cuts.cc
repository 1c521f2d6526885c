#include "clean/leader_cuts.h"

#include "clean/glyphs.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

constexpr double kWidestLetter = 1.6;     // capital heights
constexpr double kWidestGap = 0.62;       // between letters of one string
constexpr double kThickestLeader = 0.57;  // along the row; leaders slant
constexpr double kLargest = 30;           // of what has a leader

// Components along the text: rows become columns where it stands.
class View {
 public:
  View(const Components& components, bool standing) : components_(components), standing_(standing) {}

  Box BoxOf(const Component& component) const { return AlongText(component.box, standing_); }

  // The part of a component within `window`, which has the view's frame.
  InkImage Part(const Component& component, const Box& window) const {
    InkImage part(window.width, window.height);
    const Box scan = AlongText(window, standing_);
    for (std::size_t i = 0; i < component.run_count; ++i) {
      const Run& run = components_.runs[component.first_run + i];
      if (run.y < scan.y || run.y >= scan.bottom()) {
        continue;
      }
      const int begin = std::max(run.begin, scan.x);
      const int end = std::min(run.end, scan.right());
      if (!standing_ && begin < end) {
        part.row(run.y - window.y).Ink(begin - window.x, end - window.x);
      }
      for (int x = begin; standing_ && x < end; ++x) {
        part.row(x - window.y)[run.y - window.x] = 1;
      }
    }
    return part;
  }

  void RubOut(int row, int begin, int end, InkImage& ink) const {
    for (int i = begin; i < end; ++i) {
      if (standing_) {
        ink.row(i)[row] = 0;
      } else {
        ink.row(row)[i] = 0;
      }
    }
  }

 private:
  const Components& components_;
  bool standing_;
};

struct Span {
  int begin = 0;
  int end = 0;
};

// The runs of ink of a row that touch those of `beside`, a span of the next row.
std::vector<Span> Touching(const InkImage& ink, int row, const Span& beside) {
  std::vector<Span> spans;
  if (row < 0 || row >= ink.height) {
    return spans;
  }
  const InkImage::ConstRow pixels = ink.row(row);
  for (int begin = pixels.NextInk(0); begin < ink.width && begin <= beside.end;) {
    const int end = pixels.NextGround(begin);
    if (end >= beside.begin) {
      spans.push_back({begin, end});
    }
    begin = pixels.NextInk(end);
  }
  return spans;
}

// Rubs out a stroke from `row` on, away from the letter, as long as it is thin and nothing joins it.
// Returns how many rows.
int RubOutStroke(const View& view, const InkImage& part, const Box& window, int row, int step, Span span, int thickest,
                 InkImage& ink) {
  int rows = 0;
  while (span.end - span.begin <= thickest) {
    view.RubOut(window.y + row, window.x + span.begin, window.x + span.end, ink);
    ++rows;
    row += step;
    const std::vector<Span> next = Touching(part, row, span);
    if (next.size() != 1) {
      break;
    }
    span = next.front();
  }
  return rows;
}

// Cuts what leaves the row of `letter` if what lies in it beside the letter is a letter itself.
bool CutBeside(const View& view, const Component& large, const Box& letter, double cap, InkImage& ink) {
  constexpr double kAlike = 0.2;   // how much the tops or feet of two letters of a row differ, of their height
  constexpr double kLeast = 0.35;  // capital heights, of a leader
  const int margin = std::max(1, letter.height / 16);
  const auto reach = static_cast<int>((kWidestGap + kWidestLetter) * cap);
  const auto along = static_cast<int>(2 * kLeast * cap);
  const Box all = view.BoxOf(large);
  const Box window = Intersection({letter.x - reach, letter.y - margin - along, letter.width + 2 * reach,
                                   letter.height + 2 * (margin + along)},
                                  {all.x, all.y, all.width, all.height});
  if (window.empty()) {
    return false;
  }
  const InkImage part = view.Part(large, window);
  const int top = std::max(0, letter.y - margin - window.y);
  const int bottom = std::min(window.height, letter.bottom() + margin - window.y);
  if (top >= bottom) {
    return false;
  }
  InkImage row(window.width, bottom - top);
  for (int y = top; y < bottom; ++y) {
    std::copy_n(part.row_words(y), part.words_per_row(), row.row_words(y - top));
  }
  const Components pieces = FindComponents(row);
  bool cut = false;
  for (const Component& piece : pieces.items) {
    const Box box{piece.box.x + window.x, piece.box.y + top + window.y, piece.box.width, piece.box.height};
    const int gap = std::max(box.x - letter.right(), letter.x - box.right());
    const bool beside = gap > -static_cast<int>(0.1 * cap) && gap <= kWidestGap * cap;
    const bool in_row = box.y <= letter.y + kAlike * letter.height &&
                        box.bottom() >= letter.bottom() - kAlike * letter.height;
    if (!beside || !in_row || box.width > kWidestLetter * cap || piece.box.x == 0 ||
        piece.box.right() == window.width) {
      continue;
    }
    // Runs at the edges of the row that go on beyond it.
    struct Exit {
      int row = 0;
      int step = 0;
      Span span;
    };
    std::vector<Exit> exits;
    for (std::size_t i = 0; i < piece.run_count; ++i) {
      const Run& run = pieces.runs[piece.first_run + i];
      const Span span{run.begin, run.end};
      if (run.y == 0) {
        for (const Span& next : Touching(part, top - 1, span)) exits.push_back({top - 1, -1, next});
      }
      if (run.y == row.height - 1) {
        for (const Span& next : Touching(part, bottom, span)) exits.push_back({bottom, 1, next});
      }
    }
    if (exits.size() != 1) {
      continue;
    }
    const Exit& exit = exits.front();
    const auto thickest = static_cast<int>(kThickestLeader * cap);
    if (exit.span.end - exit.span.begin <= thickest) {
      RubOutStroke(view, part, window, exit.row, exit.step, exit.span, thickest, ink);
      cut = true;
    }
  }
  return cut;
}

bool CutLeaders(const Components& components, double cap, bool standing, InkImage& ink) {
  constexpr double kLowestLetter = 0.6;  // capital heights
  constexpr double kHighestLetter = 1.4;
  constexpr double kHigherBy = 1.2;  // than the letter beside it, with a leader
  const View view(components, standing);
  std::vector<Box> letters;
  std::vector<const Component*> large;
  for (const Component& component : components.items) {
    const Box box = view.BoxOf(component);
    if (box.height >= kLowestLetter * cap && box.height <= kHighestLetter * cap && box.width <= kWidestLetter * cap &&
        IsTextSized(box, component.ink, cap)) {
      letters.push_back(box);
    }
    if (box.height > kHigherBy * kLowestLetter * cap && std::max(box.width, box.height) <= kLargest * cap) {
      large.push_back(&component);
    }
  }
  std::sort(letters.begin(), letters.end(), [](const Box& a, const Box& b) { return a.y < b.y; });
  bool cut = false;
  for (const Component* one : large) {
    const Box box = view.BoxOf(*one);
    const auto reach = static_cast<int>(kWidestGap * cap);
    auto letter = std::lower_bound(letters.begin(), letters.end(), box.y - static_cast<int>(kHighestLetter * cap),
                                   [](const Box& a, int y) { return a.y < y; });
    for (; letter != letters.end() && letter->y < box.bottom(); ++letter) {
      if (letter->x <= box.right() + reach && letter->right() >= box.x - reach &&
          box.height > kHigherBy * letter->height) {
        cut = CutBeside(view, *one, *letter, cap, ink) || cut;
      }
    }
  }
  return cut;
}

}  // namespace

bool CutLeaders(const Components& components, double cap_px, InkImage& ink) {
  const bool lying = CutLeaders(components, cap_px, false, ink);
  const bool standing = CutLeaders(components, cap_px, true, ink);
  return lying || standing;
}

}  // namespace benchleaf
