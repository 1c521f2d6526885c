#include "clean/title_mending.h"

#include "benchleaf/clean/components.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

// One letter of a title, or several that touch.
bool IsTitleSized(const Component& component, double cap) {
  const Box& box = component.box;
  const double area = 1.0 * box.width * box.height;
  return box.height >= 1.3 * cap && box.height <= 3 * cap && box.width <= 6 * box.height &&
         component.ink >= 0.1 * area && component.ink <= 0.7 * area;
}

bool StandBesideEachOther(const Box& a, const Box& b) {
  constexpr double kReach = 4;    // of their height
  constexpr double kAlike = 0.2;  // by how much their height and foot may differ
  const int apart = std::max(a.x, b.x) - std::min(a.right(), b.right());
  return apart <= kReach * a.height && std::abs(a.bottom() - b.bottom()) <= kAlike * a.height &&
         std::abs(a.height - b.height) <= kAlike * a.height;
}

bool IsCut(const Components& components, const Component& component, const InkImage& rest) {
  for (std::size_t i = 0; i < component.run_count; ++i) {
    const Run& run = components.runs[component.first_run + i];
    if (rest.row(run.y).NextGround(run.begin) < run.end) {
      return true;
    }
  }
  return false;
}

}  // namespace

bool MendTitles(const InkImage& ink, double cap_px, InkImage& rest) {
  constexpr std::ptrdiff_t kFewestOthers = 3;
  const Components components = FindComponents(ink);
  std::vector<const Component*> letters;
  for (const Component& component : components.items) {
    if (IsTitleSized(component, cap_px)) {
      letters.push_back(&component);
    }
  }
  bool mended = false;
  for (const Component* letter : letters) {
    if (!IsCut(components, *letter, rest)) {
      continue;
    }
    const auto others = std::count_if(letters.begin(), letters.end(), [letter](const Component* other) {
      return other != letter && StandBesideEachOther(letter->box, other->box);
    });
    if (others >= kFewestOthers) {
      mended = true;
      Paint(components, *letter, rest);
    }
  }
  return mended;
}

}  // namespace benchleaf
