#include "clean/pale_lettering.h"

#include "benchleaf/clean/components.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace benchleaf {
namespace {

constexpr std::uint8_t kPalestInk = 236;  // even ground is lighter than 240 nearly everywhere
constexpr std::uint8_t kDarkInk = 144;
constexpr int kSoftEdge = 7;  // px: the width of a brick that covers a dark stroke's edges as well
constexpr std::size_t kFewestLetters = 8;
constexpr double kMark = 0.4;  // capital heights: all that is more than a speck
// Of the pale marks. On pages with pale lettering nine in ten are letters, on thin, coarse or photographed ones, which
// are full of pale remains, at most a quarter.
constexpr double kLeastShare = 0.3;

// The size of a letter, lying or standing.
bool IsLetter(const Component& component, double cap) {
  const int larger = std::max(component.box.width, component.box.height);
  return larger >= 0.7 * cap && larger <= 1.5 * cap && component.ink >= 0.1 * larger * larger;
}

// The size of a few letters that touch, as pale ones do on coarse scans.
bool IsJoinedLetters(const Component& component, double cap) {
  constexpr double kLongest = 4.5;
  constexpr double kInk = 0.2;  // of the box; the remains of an outline fill less
  const int larger = std::max(component.box.width, component.box.height);
  const int smaller = std::min(component.box.width, component.box.height);
  return smaller >= 0.7 * cap && smaller <= 1.5 * cap && larger > 1.5 * cap && larger <= kLongest * cap &&
         component.ink >= kInk * larger * smaller;
}

// Whether hardly any of the box is dark: what is left of the soft edges of dark letters stands round them.
bool IsPale(const Box& box, const InkImage& dark) {
  constexpr double kMostDark = 0.25;
  int count = 0;
  for (int y = box.y; y < box.bottom(); ++y) {
    for (int x = box.x; x < box.right(); ++x) count += dark.row(y)[x];
  }
  return count <= kMostDark * box.width * box.height;
}

}  // namespace

void AddPaleLetters(const GreyImage& level, double cap_px, InkImage& rest) {
  // Pale letters often touch dark ones or their symbol.
  const InkImage dark = Dilated(Thresholded(level, kDarkInk), kSoftEdge, kSoftEdge);
  InkImage pale = Thresholded(level, kPalestInk);
  std::transform(pale.words.begin(), pale.words.end(), dark.words.begin(), pale.words.begin(),
                 [](std::uint32_t of_pale, std::uint32_t of_dark) { return of_pale & ~of_dark; });
  // Opened: the grain of the paper would make millions of components on a fold-out.
  const Components components = FindComponents(Opened(pale, 2, 2));
  std::vector<const Component*> letters;
  std::vector<const Component*> joined;
  double marks = 0;
  for (const Component& component : components.items) {
    marks += std::max(component.box.width, component.box.height) >= kMark * cap_px ? 1 : 0;
    if (IsLetter(component, cap_px) && IsPale(component.box, dark)) {
      letters.push_back(&component);
    } else if (IsJoinedLetters(component, cap_px) && IsPale(component.box, dark)) {
      joined.push_back(&component);
    }
  }
  if (letters.size() < kFewestLetters || static_cast<double>(letters.size()) < kLeastShare * marks) {
    return;
  }
  letters.insert(letters.end(), joined.begin(), joined.end());
  for (const Component* letter : letters) {
    Paint(components, *letter, rest);
  }
}

}  // namespace benchleaf
