#include "clean/white_lettering.h"

#include "clean/lettering_height.h"

#include "benchleaf/clean/components.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

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

// Whether the label, turned, holds at least two letters that do not touch its edge.
bool HoldsLetters(const InkImage& label, double cap) {
  const Components components = FindComponents(label);
  const auto letters = std::count_if(components.items.begin(), components.items.end(), [&](const Component& one) {
    return one.box.x > 0 && one.box.y > 0 && one.box.right() < label.width && one.box.bottom() < label.height &&
           std::max(one.box.width, one.box.height) >= 0.6 * cap && IsGlyphLike(one, std::max(one.box.height, 1));
  });
  return letters >= 2;
}

}  // namespace

void TurnWhiteLettering(double cap_px, GreyImage& level, InkImage& ink) {
  constexpr double kThickerThanStrokes = 0.3;  // capital heights
  constexpr double kEdge = 0.15;
  constexpr double kLowest = 1.3;
  constexpr double kHighest = 4;
  constexpr double kLongest = 25;
  constexpr std::uint8_t kInkBelow = 128;
  const int brick = static_cast<int>(std::lround(kThickerThanStrokes * cap_px));
  const int edge = static_cast<int>(std::lround(kEdge * cap_px));
  for (const Component& solid : FindComponents(Opened(ink, brick, brick)).items) {
    const Box& box = solid.box;
    const int lower = std::min(box.width, box.height);
    if (lower < kLowest * cap_px || lower > kHighest * cap_px || std::max(box.width, box.height) > kLongest * cap_px ||
        4 * solid.ink < box.width * box.height) {
      continue;
    }
    GreyImage solid_grey = Crop(level, box);
    const Levels levels = LevelsOf(solid_grey);
    // In a coarse scan, bands of a resistor and black letters within a frame run together.
    if (levels.middle >= kInkBelow) {
      continue;
    }
    const GreyImage label = Inverted(std::move(solid_grey), levels, edge);
    const InkImage letters = Thresholded(label, kInkBelow);
    if (!HoldsLetters(letters, cap_px)) {
      continue;
    }
    for (int y = 0; y < box.height; ++y) {
      std::copy_n(label.row(y), box.width, level.row(box.y + y) + box.x);
      for (int x = 0; x < box.width; ++x) {
        ink.row(box.y + y)[box.x + x] = letters.row(y)[x];
      }
    }
  }
}

}  // namespace benchleaf
