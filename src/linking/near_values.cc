#include "linking/near_values.h"

#include "extract/page_bands.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace benchleaf::linking {
namespace {

constexpr double kReach = 3;  // capital heights

// A capital height as fractions of the page's width and height, judged by the designator's own box: letters are about
// 0.8 as wide as high, spaces included.
std::pair<double, double> CapHeight(const Sighting& designator) {
  constexpr double kLetterWidth = 0.8;
  const double letters = static_cast<double>(std::max<std::size_t>(1, designator.text.size()));
  if (designator.turn % 180 == 0) {
    return {designator.box.width / letters / kLetterWidth, designator.box.height};
  }
  return {designator.box.width, designator.box.height / letters / kLetterWidth};
}

// The free space between two spans.
double Space(double a, double a_size, double b, double b_size) {
  return std::max({0.0, b - (a + a_size), a - (b + b_size)});
}

// In capital heights.
double Distance(const Sighting& designator, const Sighting& value) {
  const auto [across, down] = CapHeight(designator);
  if (across <= 0 || down <= 0) {
    return std::numeric_limits<double>::infinity();
  }
  const FractionBox& a = designator.box;
  const FractionBox& b = value.box;
  return std::max(Space(a.x, a.width, b.x, b.width) / across, Space(a.y, a.height, b.y, b.height) / down);
}

}  // namespace

std::vector<std::vector<std::size_t>> ValuesBeside(const std::vector<Sighting>& sightings) {
  extract::PageBands reached(1, sightings.size());  // designators, by how far down the page each reaches
  for (std::size_t i = 0; i < sightings.size(); ++i) {
    if (sightings[i].kind == TermKind::kDesignator) {
      const FractionBox& box = sightings[i].box;
      const double reach = kReach * CapHeight(sightings[i]).second;
      reached.Add(i, box.y - reach, box.y + box.height + reach);
    }
  }
  std::vector<std::vector<std::pair<double, std::size_t>>> found(sightings.size());
  for (std::size_t value = 0; value < sightings.size(); ++value) {
    if (sightings[value].kind != TermKind::kValue) {
      continue;
    }
    std::size_t owner = sightings.size();
    double nearest = kReach;
    const FractionBox& box = sightings[value].box;
    for (const std::size_t i : reached.Beside(box.y, box.y + box.height)) {
      const double distance = Distance(sightings[i], sightings[value]);
      if (distance < nearest) {
        nearest = distance;
        owner = i;
      }
    }
    if (owner < sightings.size()) {
      found[owner].emplace_back(nearest, value);
    }
  }
  std::vector<std::vector<std::size_t>> beside(sightings.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    std::sort(found[i].begin(), found[i].end());
    for (const auto& [distance, value] : found[i]) {
      beside[i].push_back(value);
    }
  }
  return beside;
}

}  // namespace benchleaf::linking
