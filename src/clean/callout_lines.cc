#include "clean/callout_lines.h"

#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

constexpr double kLargestCaps = 30;    // of a component that is looked at
constexpr double kShortestCaps = 1.3;  // of a stroke that is no letter's
constexpr double kThickestCaps = 0.4;  // of such a stroke
constexpr double kSteepest = 1.42;     // the length of a slanting stroke's runs over its thickness, at most

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
  const auto thickest = static_cast<int>(kSteepest * kThickestCaps * cap);
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
    if (RubOutStrokes(cap_px, alone)) {
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
