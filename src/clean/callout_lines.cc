#include "clean/callout_lines.h"

#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <vector>

namespace benchleaf {
namespace {

constexpr double kLargestCaps = 30;    // of a component that is looked at
constexpr double kShortestCaps = 1.3;  // of a stroke that is no letter's
constexpr double kThickestCaps = 0.4;  // of such a stroke, along the row

void RubOut(const Run& run, InkImage& ink) {
  for (int x = run.begin; x < run.end; ++x) {
    ink.row(run.y)[x] = 0;
  }
}

// A component by itself.
InkImage Alone(const Components& components, const Component& component) {
  InkImage alone(component.box.width, component.box.height);
  for (std::size_t i = 0; i < component.run_count; ++i) {
    const Run& run = components.runs[component.first_run + i];
    alone.row(run.y - component.box.y).Ink(run.begin - component.box.x, run.end - component.box.x);
  }
  return alone;
}

// What may be the inside of a ring: a hole, or two that the letters between part from each other.
std::vector<Hole> Discs(const std::vector<Hole>& holes, double cap) {
  constexpr double kLeastHoleCaps = 0.4;  // the side of a square of its area
  std::vector<Hole> discs;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    for (std::size_t j = 0; j <= i; ++j) {
      if (std::min(holes[i].px, holes[j].px) >= kLeastHoleCaps * cap * kLeastHoleCaps * cap) {
        discs.push_back({Union(holes[i].box, holes[j].box), holes[i].px + (j == i ? 0 : holes[j].px)});
      }
    }
  }
  return discs;
}

struct Circle {
  double x = 0;  // of its middle, px
  double y = 0;
  double radius = 0;
};

// How far ink goes outwards from the circle in one direction, px; 0 where there is none.
int Thickness(const InkImage& ink, const Circle& circle, double angle, int most) {
  int thickness = 0;
  for (int step = -2; step <= most; ++step) {
    const auto x = static_cast<int>(std::lround(circle.x + (circle.radius + step) * std::cos(angle)));
    const auto y = static_cast<int>(std::lround(circle.y + (circle.radius + step) * std::sin(angle)));
    const bool is_ink = x >= 0 && y >= 0 && x < ink.width && y < ink.height && ink.row(y)[x] != 0;
    if (is_ink) {
      ++thickness;
    } else if (thickness > 0) {
      break;
    }
  }
  return thickness;
}

// The ring of ink round a circle.
struct Drawn {
  int thickness = 0;   // px
  double missing = 0;  // share of the circle without ink
  double uneven = 0;   // share where it is missing, or thicker or thinner than elsewhere
};

Drawn LookAt(const InkImage& ink, const Circle& circle, int most) {
  constexpr int kAngles = 64;
  constexpr int kEvenPx = 2;
  std::vector<int> all;
  all.reserve(kAngles);
  for (int i = 0; i < kAngles; ++i) {
    all.push_back(Thickness(ink, circle, 2 * std::numbers::pi * i / kAngles, most));
  }
  const auto middle = all.begin() + kAngles / 2;
  std::nth_element(all.begin(), middle, all.end());
  const int usual = *middle;
  const auto share = [&](const auto& which) {
    return static_cast<double>(std::count_if(all.begin(), all.end(), which)) / kAngles;
  };
  return {usual, share([](int one) { return one == 0; }),
          share([&](int one) { return std::abs(one - usual) > kEvenPx; })};
}

// The ring about a disc, whose letters may fill it to one edge or to both, so that it seems less wide or high.
Circle RingAbout(const Box& disc, const InkImage& ink, int most) {
  const double radius = std::max(disc.width, disc.height) / 2.0;
  const double slack_x = radius - disc.width / 2.0;
  const double slack_y = radius - disc.height / 2.0;
  Circle best;
  double least = 2;
  for (const double side : {0.0, -1.0, 1.0}) {
    const Circle circle{disc.center_x() - 0.5 + side * slack_x, disc.center_y() - 0.5 + side * slack_y, radius};
    const double uneven = LookAt(ink, circle, most).uneven;
    if (uneven < least) {
      least = uneven;
      best = circle;
    }
  }
  return best;
}

// Rubs the ring round a disc out of `ink`. False when there is none.
bool RubOutRing(const Hole& disc, double cap, InkImage& ink) {
  constexpr double kSmallestCaps = 1.4;
  constexpr double kLargestRingCaps = 9;
  constexpr double kRound = 0.25;      // how much less wide than high, or the other way round
  constexpr double kLeastClear = 0.3;  // of the disc; the rest is what stands in it
  constexpr double kMostClear = 0.95;
  constexpr double kMostMissing = 0.15;
  constexpr double kMostUneven = 0.45;  // leader and letters touch it
  const double side = std::max(disc.box.width, disc.box.height);
  const double clear = disc.px / (std::numbers::pi / 4 * side * side);
  if (side < kSmallestCaps * cap || side > kLargestRingCaps * cap ||
      std::abs(disc.box.width - disc.box.height) > kRound * side || clear < kLeastClear || clear > kMostClear) {
    return false;
  }
  const auto most = static_cast<int>(kThickestCaps * cap);
  const Circle ring = RingAbout(disc.box, ink, most);
  const Drawn drawn = LookAt(ink, ring, most);
  if (drawn.missing > kMostMissing || drawn.uneven > kMostUneven || drawn.thickness >= most) {
    return false;
  }
  const double outer = ring.radius + drawn.thickness + 2;  // for no ring is quite round
  for (int y = 0; y < ink.height; ++y) {
    for (int x = 0; x < ink.width; ++x) {
      const double distance = std::hypot(x - ring.x, y - ring.y);
      if (distance >= ring.radius - 1 && distance <= outer) {
        ink.row(y)[x] = 0;
      }
    }
  }
  return true;
}

// For each run the only one that it touches in the next row, if it is also that one's only one above; else -1.
std::vector<int> OnlyNext(const Run* runs, int count) {
  std::vector<int> below(static_cast<std::size_t>(count), 0);
  std::vector<int> above(below.size(), 0);
  std::vector<int> next(below.size(), -1);
  int low = 0;
  for (int i = 0; i < count; ++i) {
    while (low < count &&
           (runs[low].y <= runs[i].y || (runs[low].y == runs[i].y + 1 && runs[low].end < runs[i].begin))) {
      ++low;
    }
    for (int j = low; j < count && runs[j].y == runs[i].y + 1 && runs[j].begin <= runs[i].end; ++j) {
      ++below[static_cast<std::size_t>(i)];
      ++above[static_cast<std::size_t>(j)];
      next[static_cast<std::size_t>(i)] = j;
    }
  }
  for (std::size_t i = 0; i < next.size(); ++i) {
    if (below[i] != 1 || above[static_cast<std::size_t>(next[i])] != 1) {
      next[i] = -1;
    }
  }
  return next;
}

double Middle(const Run& run) { return (run.begin + run.end) / 2.0; }

// Appends the straight parts of a chain of runs, from `first` to `last`, that are long enough (Douglas and Peucker's
// way of parting a line).
void AppendStraight(const std::vector<Run>& chain, std::size_t first, std::size_t last, double shortest,
                    std::vector<Run>& found) {
  constexpr double kStraightPx = 2;
  if (static_cast<double>(last - first) < shortest) {
    return;
  }
  double farthest = 0;
  std::size_t bend = first;
  for (std::size_t i = first + 1; i < last; ++i) {
    const double share = static_cast<double>(i - first) / static_cast<double>(last - first);
    const double away =
        std::abs(Middle(chain[i]) - Middle(chain[first]) - share * (Middle(chain[last]) - Middle(chain[first])));
    if (away > farthest) {
      farthest = away;
      bend = i;
    }
  }
  if (farthest <= kStraightPx) {
    found.insert(found.end(), chain.begin() + static_cast<std::ptrdiff_t>(first),
                 chain.begin() + static_cast<std::ptrdiff_t>(last) + 1);
    return;
  }
  AppendStraight(chain, first, bend, shortest, found);
  AppendStraight(chain, bend, last, shortest, found);
}

// Runs of long straight strokes that go up and down, with nothing beside them.
std::vector<Run> LongStrokes(const InkImage& ink, double cap) {
  std::vector<Run> found;
  const Components components = FindComponents(ink);
  const auto thickest = static_cast<int>(kThickestCaps * cap);
  for (const Component& component : components.items) {
    if (component.box.height < kShortestCaps * cap) {
      continue;
    }
    const Run* runs = components.runs.data() + component.first_run;
    const std::vector<int> next = OnlyNext(runs, static_cast<int>(component.run_count));
    std::vector<bool> seen(next.size(), false);
    for (std::size_t i = 0; i < next.size(); ++i) {
      std::vector<Run> chain;
      for (int at = static_cast<int>(i);
           at >= 0 && !seen[static_cast<std::size_t>(at)] && runs[at].end - runs[at].begin <= thickest;
           at = next[static_cast<std::size_t>(at)]) {
        seen[static_cast<std::size_t>(at)] = true;
        chain.push_back(runs[at]);
      }
      if (!chain.empty()) {
        AppendStraight(chain, 0, chain.size() - 1, kShortestCaps * cap, found);
      }
    }
  }
  return found;
}

bool RubOutStrokes(double cap, InkImage& ink) {
  const std::vector<Run> steep = LongStrokes(ink, cap);
  const std::vector<Run> shallow = LongStrokes(OnItsSide(ink), cap);
  for (const Run& run : steep) {
    RubOut(run, ink);
  }
  for (const Run& run : shallow) {
    // A row of the picture on its side is a column, from its foot.
    for (int i = run.begin; i < run.end; ++i) {
      ink.row(ink.height - 1 - i)[run.y] = 0;
    }
  }
  return !steep.empty() || !shallow.empty();
}

}  // namespace

bool RubOutCalloutLines(const Components& components, double cap_px, InkImage& ink) {
  bool rubbed = false;
  for (std::size_t i = 0; i < components.items.size(); ++i) {
    const Component& component = components.items[i];
    const Box& box = component.box;
    const int larger = std::max(box.width, box.height);
    if (larger < (1 + kShortestCaps) * cap_px || larger > kLargestCaps * cap_px) {
      continue;
    }
    InkImage alone = Alone(components, component);
    bool changed = false;
    for (const Hole& disc : Discs(FindHoles(components, i), cap_px)) {
      changed = RubOutRing({{disc.box.x - box.x, disc.box.y - box.y, disc.box.width, disc.box.height}, disc.px}, cap_px,
                           alone) ||
                changed;
    }
    changed = RubOutStrokes(cap_px, alone) || changed;
    if (changed) {
      for (std::size_t r = 0; r < component.run_count; ++r) {
        const Run& run = components.runs[component.first_run + r];
        for (int x = run.begin; x < run.end; ++x) {
          ink.row(run.y)[x] = alone.row(run.y - box.y)[x - box.x];
        }
      }
      rubbed = true;
    }
  }
  return rubbed;
}

}  // namespace benchleaf
