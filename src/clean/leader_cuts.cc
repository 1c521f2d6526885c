#include "clean/leader_cuts.h"

#include "clean/glyphs.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdlib>
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

double Middle(const Span& span) { return (span.begin + span.end) / 2.0; }

// A stroke's place in one row of a window.
struct Exit {
  int row = 0;
  int step = 0;  // away from the letter
  Span span;
};

// Rubs out a stroke from an exit on, away from the letter, as long as it is thin and nothing joins it, and as much of
// it as reaches `depth` rows into the letter's row.
void RubOutStroke(const View& view, const InkImage& part, const Box& window, const Exit& exit, int thickest, int depth,
                  InkImage& ink) {
  Exit at = exit;
  while (at.span.end - at.span.begin <= thickest) {
    view.RubOut(window.y + at.row, window.x + at.span.begin, window.x + at.span.end, ink);
    const std::vector<Span> next = Touching(part, at.row + at.step, at.span);
    if (next.size() != 1) {
      break;
    }
    at.row += at.step;
    at.span = next.front();
  }
  const int rows = std::abs(at.row - exit.row);
  const double drift = rows == 0 ? 0 : (Middle(exit.span) - Middle(at.span)) / rows;
  const double half = (exit.span.end - exit.span.begin) / 2.0;
  for (int i = 1; i <= depth; ++i) {
    const double middle = Middle(exit.span) + drift * i;
    const int row = exit.row - exit.step * i;
    const int begin = std::max(0, static_cast<int>(std::lround(middle - half)));
    const int end = std::min(part.width, static_cast<int>(std::lround(middle + half)));
    for (int x = begin; x < end; ++x) {
      if (part.row(row)[x] != 0) {
        view.RubOut(window.y + row, window.x + x, window.x + x + 1, ink);
      }
    }
  }
}

// Where a piece of the rows from `top` to before `bottom` goes on beyond them.
std::vector<Exit> Exits(const Components& pieces, const Component& piece, const InkImage& part, int top, int bottom) {
  std::vector<Exit> exits;
  for (std::size_t i = 0; i < piece.run_count; ++i) {
    const Run& run = pieces.runs[piece.first_run + i];
    const Span span{run.begin, run.end};
    if (run.y == 0) {
      for (const Span& next : Touching(part, top - 1, span)) exits.push_back({top - 1, -1, next});
    }
    if (run.y == bottom - top - 1) {
      for (const Span& next : Touching(part, bottom, span)) exits.push_back({bottom, 1, next});
    }
  }
  return exits;
}

InkImage Rows(const InkImage& part, int top, int bottom) {
  InkImage rows(part.width, bottom - top);
  for (int y = top; y < bottom; ++y) {
    std::copy_n(part.row_words(y), part.words_per_row(), rows.row_words(y - top));
  }
  return rows;
}

// Cuts what leaves the row of `letter` if what lies in it beside the letter is a letter itself.
bool CutBeside(const View& view, const Component& large, const Box& letter, double cap, InkImage& ink) {
  constexpr double kAlike = 0.2;    // how much the tops or feet of two letters of a row differ, of their height
  constexpr double kBeyond = 0.7;   // capital heights of a leader that are looked at
  constexpr double kDepth = 0.1;    // capital heights that a leader reaches into the row
  constexpr double kOverlap = 0.1;  // of slanting letters
  const int margin = std::max(1, letter.height / 16);
  const auto reach = static_cast<int>((kWidestGap + kWidestLetter) * cap);
  const auto beyond = static_cast<int>(kBeyond * cap);
  const auto depth = margin + static_cast<int>(std::lround(kDepth * cap));
  const Box window{letter.x - reach, letter.y - margin - beyond, letter.width + 2 * reach,
                   letter.height + 2 * (margin + beyond)};
  const InkImage part = view.Part(large, window);
  const int top = beyond;
  const int bottom = window.height - beyond;
  const Components pieces = FindComponents(Rows(part, top, bottom));
  const auto thickest = static_cast<int>(kThickestLeader * cap);
  bool cut = false;
  for (const Component& piece : pieces.items) {
    const Box box{piece.box.x + window.x, piece.box.y + top + window.y, piece.box.width, piece.box.height};
    const int gap = std::max(box.x - letter.right(), letter.x - box.right());
    const bool beside = gap > -kOverlap * cap && gap <= kWidestGap * cap;
    const bool in_row =
        box.y <= letter.y + kAlike * letter.height && box.bottom() >= letter.bottom() - kAlike * letter.height;
    if (!beside || !in_row || box.width > kWidestLetter * cap || piece.box.x == 0 ||
        piece.box.right() == window.width) {
      continue;
    }
    const std::vector<Exit> exits = Exits(pieces, piece, part, top, bottom);
    if (exits.size() == 1 && exits.front().span.end - exits.front().span.begin <= thickest) {
      RubOutStroke(view, part, window, exits.front(), thickest, depth, ink);
      cut = true;
    }
  }
  return cut;
}

// Rubs out a thin stroke that goes on along the row from the far end of the letter beside `letter`.
bool TrimBeside(const View& across, const Component& large, const Box& letter, double cap, InkImage& ink) {
  constexpr double kShortest = 0.5;  // capital heights
  constexpr double kAlike = 0.2;     // of the letter's height
  constexpr double kNarrowest = 0.3;
  constexpr double kWidest = 1.1;
  // Rows of `across` are columns of the text.
  const Box box = across.BoxOf(large);
  const Box beside = AlongText(letter, true);
  const int gap = std::max(box.y - beside.bottom(), beside.y - box.bottom());
  if (gap < 0 || gap > kWidestGap * cap) {
    return false;
  }
  const InkImage part = across.Part(large, box);
  const int step = box.y > beside.y ? -1 : 1;  // from the far end to the letter
  const int first = step < 0 ? box.height - 1 : 0;
  const auto thickest = static_cast<int>(kThickestLeader * cap);
  std::vector<Exit> stroke;
  for (std::vector<Span> runs = Touching(part, first, {0, part.width}); runs.size() == 1;) {
    const Exit at{first + step * static_cast<int>(stroke.size()), step, runs.front()};
    // Another run beside this one belongs to the letter.
    if (at.span.end - at.span.begin > thickest || Touching(part, at.row, {0, part.width}).size() != 1) {
      break;
    }
    stroke.push_back(at);
    runs = Touching(part, at.row + step, at.span);
  }
  const int rest = box.height - static_cast<int>(stroke.size());
  if (static_cast<double>(stroke.size()) < kShortest * cap || rest < kNarrowest * cap || rest > kWidest * cap) {
    return false;
  }
  const Box kept{box.x, step < 0 ? box.y : box.bottom() - rest, box.width, rest};
  const InkImage whole = across.Part(large, kept);
  int top = whole.width;
  int foot = 0;
  for (int y = 0; y < whole.height; ++y) {
    for (const Span& run : Touching(whole, y, {0, whole.width})) {
      top = std::min(top, run.begin);
      foot = std::max(foot, run.end);
    }
  }
  if (std::abs(kept.x + top - beside.x) > kAlike * beside.width ||
      std::abs(kept.x + foot - beside.right()) > kAlike * beside.width) {
    return false;
  }
  for (const Exit& at : stroke) {
    across.RubOut(box.y + at.row, box.x + at.span.begin, box.x + at.span.end, ink);
  }
  return true;
}

bool CutLeaders(const Components& components, double cap, bool standing, InkImage& ink) {
  constexpr double kLowestLetter = 0.6;  // capital heights
  constexpr double kHighestLetter = 1.4;
  constexpr double kHigherBy = 1.2;             // than the letter beside it, with a leader
  constexpr double kHigherThanCapitals = 1.15;  // or small letters would lose their stems
  constexpr double kWiderBy = 1.2;              // than capitals are high, with a leader along the row
  const View view(components, standing);
  const View across(components, !standing);
  std::vector<Box> letters;
  std::vector<const Component*> large;
  for (const Component& component : components.items) {
    const Box box = view.BoxOf(component);
    if (box.height >= kLowestLetter * cap && box.height <= kHighestLetter * cap && box.width <= kWidestLetter * cap &&
        IsTextSized(box, component.ink, cap)) {
      letters.push_back(box);
    }
    if (std::max(box.width, box.height) > kHigherThanCapitals * cap &&
        std::max(box.width, box.height) <= kLargest * cap) {
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
      if (letter->x > box.right() + reach || letter->right() < box.x - reach) {
        continue;
      }
      if (box.height > std::max(kHigherBy * letter->height, kHigherThanCapitals * cap)) {
        cut = CutBeside(view, *one, *letter, cap, ink) || cut;
      }
      if (box.width > kWiderBy * cap) {
        cut = TrimBeside(across, *one, *letter, cap, ink) || cut;
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
