#include "benchleaf/report/where.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace benchleaf {
namespace {

double MiddleX(const FractionBox& box) { return std::clamp(box.x + box.width / 2, 0.0, 1.0); }
double MiddleY(const FractionBox& box) { return std::clamp(box.y + box.height / 2, 0.0, 1.0); }

std::size_t Third(double fraction) { return std::min<std::size_t>(2, static_cast<std::size_t>(fraction * 3)); }

std::string Percent(double fraction) { return std::to_string(std::lround(fraction * 100)) + " %"; }

}  // namespace

std::string RegionOnPage(const FractionBox& box) {
  static constexpr std::array<std::array<const char*, 3>, 3> kRegions = {{
      {"upper left", "top", "upper right"},
      {"left", "centre", "right"},
      {"lower left", "bottom", "lower right"},
  }};
  return kRegions[Third(MiddleY(box))][Third(MiddleX(box))];
}

std::string WhereOnPage(const FractionBox& box) {
  return RegionOnPage(box) + ", " + Percent(MiddleX(box)) + " across, " + Percent(MiddleY(box)) + " down";
}

}  // namespace benchleaf
