#include "clean/white_lettering.h"

#include "benchleaf/clean/components.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

constexpr std::uint8_t kInkBelow = 128;
constexpr std::uint8_t kHeavyInkBelow = 80;  // of letters that touch otherwise

// The levels of the label's ground and of its lightest letters, and the one that half of it is darker than.
struct Levels {
  int black = 0;
  int middle = 0;
  int white = 255;
};

Levels LevelsOf(const GreyImage& label) {
  std::vector<std::uint8_t> levels = label.pixels;
  const auto at = [&](double share) {
    const auto place = levels.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(levels.size() - 1));
    std::nth_element(levels.begin(), place, levels.end());
    return int{*place};
  };
  return {at(0.3), at(0.5), at(0.98)};
}

// The label black on white. Its soft edge would be a frame round the letters, `edge` px wide.
GreyImage Inverted(GreyImage label, const Levels& levels, int edge) {
  for (std::uint8_t& pixel : label.pixels) {
    const int share = (pixel - levels.black) * 255 / std::max(1, levels.white - levels.black);
    pixel = static_cast<std::uint8_t>(255 - std::clamp(share, 0, 255));
  }
  for (int y = 0; y < label.height; ++y) {
    const bool outer = y < edge || y >= label.height - edge;
    std::fill_n(label.row(y), outer ? label.width : edge, std::uint8_t{255});
    std::fill_n(label.row(y) + label.width - edge, edge, std::uint8_t{255});
  }
  return label;
}

// Whether it has a letter's proportions, lying or standing. Letters on labels are heavy.
bool IsLetter(const Component& component, double cap) {
  const double larger = std::max(component.box.width, component.box.height);
  const bool bar = std::min(component.box.width, component.box.height) < 0.4 * larger;
  return larger >= 0.6 * cap && larger <= 2.1 * cap && component.ink >= 0.09 * larger * larger &&
         (bar || component.ink <= 0.75 * component.box.width * component.box.height);
}

// Whether the label, turned, holds at least two letters that do not touch its edge.
bool HoldsLetters(const InkImage& label, double cap) {
  const Components components = FindComponents(label);
  const auto letters = std::count_if(components.items.begin(), components.items.end(), [&](const Component& one) {
    return one.box.x > 0 && one.box.y > 0 && one.box.right() < label.width && one.box.bottom() < label.height &&
           IsLetter(one, cap);
  });
  return letters >= 2;
}

// The label's letters as ink; nothing when it holds none. Heavy letters touch, and part where less counts as ink.
std::optional<InkImage> LettersOf(const GreyImage& label, double cap) {
  for (const std::uint8_t ink_below : {kInkBelow, kHeavyInkBelow}) {
    InkImage letters = Thresholded(label, ink_below);
    if (HoldsLetters(letters, cap)) {
      return letters;
    }
  }
  return std::nullopt;
}

// Whether a frame `edge` px wide, as far from the label's border, is dark all round. Blots of photographs are ragged.
bool HasDarkFrame(const GreyImage& label, int edge) {
  constexpr double kDark = 0.9;
  int pixels = 0;
  int dark = 0;
  const auto add = [&](const Box& box, int sign) {
    for (int y = box.y; y < box.bottom(); ++y) {
      dark += sign * static_cast<int>(std::count_if(label.row(y) + box.x, label.row(y) + box.right(),
                                                    [](std::uint8_t level) { return level < kInkBelow; }));
    }
    pixels += sign * box.width * box.height;
  };
  add({edge, edge, label.width - 2 * edge, label.height - 2 * edge}, 1);
  add({2 * edge, 2 * edge, label.width - 4 * edge, label.height - 4 * edge}, -1);
  return dark > kDark * pixels;
}

// Of a label's size and fullness.
bool MayBeLabel(const Component& solid, double cap) {
  constexpr double kLowest = 1.3;  // capital heights
  constexpr double kHighest = 4;
  constexpr double kLongest = 25;
  const int lower = std::min(solid.box.width, solid.box.height);
  return lower >= kLowest * cap && lower <= kHighest * cap &&
         std::max(solid.box.width, solid.box.height) <= kLongest * cap &&
         4 * solid.ink >= solid.box.width * solid.box.height;
}

void Put(const GreyImage& label, const InkImage& letters, const Box& box, GreyImage& level, InkImage& ink) {
  for (int y = 0; y < box.height; ++y) {
    std::copy_n(label.row(y), box.width, level.row(box.y + y) + box.x);
    for (int x = 0; x < box.width; ++x) {
      ink.row(box.y + y)[box.x + x] = letters.row(y)[x];
    }
  }
}

}  // namespace

void TurnWhiteLettering(double cap_px, GreyImage& level, InkImage& ink) {
  constexpr double kThickerThanStrokes = 0.3;  // capital heights
  constexpr double kEdge = 0.15;
  const int brick = static_cast<int>(std::lround(kThickerThanStrokes * cap_px));
  const int edge = static_cast<int>(std::lround(kEdge * cap_px));
  // The local threshold leaves the inside of some labels out.
  for (const bool by_level : {false, true}) {
    const InkImage solids = Opened(by_level ? Thresholded(level, kInkBelow) : ink, brick, brick);
    for (const Component& solid : FindComponents(solids).items) {
      if (!MayBeLabel(solid, cap_px)) {
        continue;
      }
      GreyImage solid_grey = Crop(level, solid.box);
      const Levels levels = LevelsOf(solid_grey);
      // In a coarse scan, bands of a resistor and black letters within a frame run together.
      if (levels.middle >= kInkBelow || (by_level && !HasDarkFrame(solid_grey, edge))) {
        continue;
      }
      const GreyImage label = Inverted(std::move(solid_grey), levels, edge);
      if (const std::optional<InkImage> letters = LettersOf(label, cap_px)) {
        Put(label, *letters, solid.box, level, ink);
      }
    }
  }
}

}  // namespace benchleaf
