#include "benchleaf/clean/components.h"

#include "clean/disjoint_sets.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace benchleaf {
namespace {

// The runs of a row, appended.
void AppendRuns(const InkImage& ink, int y, std::vector<Run>& runs) {
  const InkImage::ConstRow row = ink.row(y);
  for (int begin = row.NextInk(0); begin < ink.width;) {
    const int end = row.NextGround(begin);
    runs.push_back({y, begin, end});
    begin = row.NextInk(end);
  }
}

}  // namespace

Components FindComponents(const InkImage& ink) {
  std::vector<Run> runs;
  DisjointSets sets;
  std::size_t above_begin = 0;
  std::size_t above_end = 0;
  for (int y = 0; y < ink.height; ++y) {
    const std::size_t row_begin = runs.size();
    AppendRuns(ink, y, runs);
    sets.Grow(runs.size());
    // Both rows are in order, so one walk finds every pair that touches, corners included.
    std::size_t above = above_begin;
    for (std::size_t i = row_begin; i < runs.size(); ++i) {
      while (above < above_end && runs[above].end < runs[i].begin) {
        ++above;
      }
      for (std::size_t j = above; j < above_end && runs[j].begin <= runs[i].end; ++j) {
        sets.Join(i, j);
      }
    }
    above_begin = row_begin;
    above_end = runs.size();
  }

  Components found;
  // A set's least run comes first, and numbers its component.
  std::vector<std::uint32_t> owner(runs.size());
  for (std::size_t i = 0; i < runs.size(); ++i) {
    const std::size_t least = sets.Find(i);
    if (least == i) {
      owner[i] = static_cast<std::uint32_t>(found.items.size());
      found.items.emplace_back();
    } else {
      owner[i] = owner[least];
    }
    Component& component = found.items[owner[i]];
    const Run& run = runs[i];
    component.box = Union(component.box, {run.begin, run.y, run.end - run.begin, 1});
    component.ink += run.end - run.begin;
    ++component.run_count;
  }
  std::size_t next = 0;
  for (Component& component : found.items) {
    component.first_run = next;
    next += component.run_count;
    component.run_count = 0;
  }
  found.runs.resize(runs.size());
  for (std::size_t i = 0; i < runs.size(); ++i) {
    Component& component = found.items[owner[i]];
    found.runs[component.first_run + component.run_count++] = runs[i];
  }
  return found;
}

void Paint(const Components& components, const Component& component, InkImage& ink) {
  for (std::size_t i = 0; i < component.run_count; ++i) {
    const Run& run = components.runs[component.first_run + i];
    ink.row(run.y).Ink(run.begin, run.end);
  }
}

std::vector<Hole> FindHoles(const Components& components, std::size_t which) {
  const Component& component = components.items[which];
  InkImage ground(component.box.width + 2, component.box.height + 2);
  for (int y = 0; y < ground.height; ++y) {
    ground.row(y).Ink(0, ground.width);
  }
  for (std::size_t i = 0; i < component.run_count; ++i) {
    const Run& run = components.runs[component.first_run + i];
    for (int x = run.begin; x < run.end; ++x) {
      ground.row(run.y - component.box.y + 1)[x - component.box.x + 1] = 0;
    }
  }
  std::vector<Hole> holes;
  // The first ground from the top is what surrounds the component.
  const Components grounds = FindComponents(ground);
  for (std::size_t i = 1; i < grounds.items.size(); ++i) {
    const Box& box = grounds.items[i].box;
    holes.push_back(
        {{box.x + component.box.x - 1, box.y + component.box.y - 1, box.width, box.height}, grounds.items[i].ink});
  }
  return holes;
}

Box LargestHole(const Components& components, std::size_t which) {
  const std::vector<Hole> holes = FindHoles(components, which);
  const auto largest =
      std::max_element(holes.begin(), holes.end(), [](const Hole& a, const Hole& b) { return a.px < b.px; });
  return largest == holes.end() ? Box{} : largest->box;
}

}  // namespace benchleaf
