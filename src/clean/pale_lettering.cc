#include "clean/pale_lettering.h"

#include "benchleaf/clean/components.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace benchleaf {
namespace {

constexpr std::uint8_t kPalestInk = 228;  // even ground is lighter than 240 nearly everywhere
constexpr std::size_t kFewestLetters = 8;

// The size of a letter, lying or standing.
bool IsLetter(const Component& component, double cap) {
  const int larger = std::max(component.box.width, component.box.height);
  return larger >= 0.7 * cap && larger <= 1.5 * cap && component.ink >= 0.1 * larger * larger;
}

// Whether hardly any of it is ink already: letters proper are, but for their blurred edges.
bool IsPale(const Components& components, const Component& component, const InkImage& ink) {
  constexpr double kMostInk = 0.4;
  int dark = 0;
  for (std::size_t i = 0; i < component.run_count; ++i) {
    const Run& run = components.runs[component.first_run + i];
    for (int x = run.begin; x < run.end; ++x) dark += ink.row(run.y)[x];
  }
  return dark <= kMostInk * component.ink;
}

}  // namespace

void AddPaleLetters(const GreyImage& level, const InkImage& ink, double cap_px, InkImage& rest) {
  // Opened: the grain of the paper would make millions of components on a fold-out.
  const Components components = FindComponents(Opened(Thresholded(level, kPalestInk), 2, 2));
  std::vector<const Component*> letters;
  for (const Component& component : components.items) {
    if (IsLetter(component, cap_px) && IsPale(components, component, ink)) {
      letters.push_back(&component);
    }
  }
  if (letters.size() < kFewestLetters) {
    return;
  }
  for (const Component* letter : letters) {
    Paint(components, *letter, rest);
  }
}

}  // namespace benchleaf
