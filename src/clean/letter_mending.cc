#include "clean/letter_mending.h"

#include "benchleaf/clean/components.h"

#include <algorithm>
#include <cstddef>
#include <tuple>
#include <vector>

namespace benchleaf {
namespace {

// Tells which component has ink near a place.
class ComponentMap {
 public:
  explicit ComponentMap(const Components& components) : components_(components) {
    for (std::size_t i = 0; i < components.items.size(); ++i) {
      const Component& component = components.items[i];
      for (std::size_t r = 0; r < component.run_count; ++r) {
        runs_.push_back({components.runs[component.first_run + r], i});
      }
    }
    std::sort(runs_.begin(), runs_.end(), [](const OwnedRun& a, const OwnedRun& b) {
      return std::tuple(a.run.y, a.run.begin) < std::tuple(b.run.y, b.run.begin);
    });
  }

  // The box of all components with ink in `area`; empty when there are none.
  Box BoxAt(const Box& area) const {
    Box box;
    for (int y = area.y; y < area.bottom(); ++y) {
      auto run = std::lower_bound(runs_.begin(), runs_.end(), std::tuple(y, area.x),
                                  [](const OwnedRun& a, auto at) { return std::tuple(a.run.y, a.run.end) <= at; });
      for (; run != runs_.end() && run->run.y == y && run->run.begin < area.right(); ++run) {
        box = Union(box, components_.items[run->component].box);
      }
    }
    return box;
  }

 private:
  struct OwnedRun {
    Run run;
    std::size_t component;
  };

  const Components& components_;
  std::vector<OwnedRun> runs_;
};

}  // namespace

void MendLetters(const InkImage& ink, double cap_px, LineSplit& split) {
  constexpr int kTouchPx = 2;       // as near as what touches a line
  constexpr double kHighest = 1.4;  // capitals: small letters may reach below the line of writing
  const Components components = FindComponents(split.rest);
  const ComponentMap map(components);
  for (const LineCrossing& crossing : split.crossings) {
    const Box& cut = crossing.cut;
    const Box before = crossing.standing ? Box{cut.x - kTouchPx, cut.y - kTouchPx, kTouchPx, 2 * kTouchPx + 1}
                                         : Box{cut.x - kTouchPx, cut.y - kTouchPx, 2 * kTouchPx + 1, kTouchPx};
    const Box after = crossing.standing ? Box{cut.right(), before.y, before.width, before.height}
                                        : Box{before.x, cut.bottom(), before.width, before.height};
    const Box both = Union(map.BoxAt(before), map.BoxAt(after));
    if ((crossing.standing ? both.width : both.height) > kHighest * cap_px) {
      continue;
    }
    for (int y = cut.y; y < cut.bottom(); ++y) {
      for (int x = cut.x; x < cut.right(); ++x) split.rest.row(y)[x] = ink.row(y)[x];
    }
  }
}

}  // namespace benchleaf
