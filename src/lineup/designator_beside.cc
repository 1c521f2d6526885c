#include "benchleaf/lineup/designator_beside.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace benchleaf {
namespace {

// How far from the type its designator may stand, in heights of its lettering. Common practice sets the two beside or
// below each other, often with the stage's name between: no source.
constexpr double kReach = 6;

// The gap between two boxes in px of the scan: fractions of its width and of its height are not of the same length.
double Distance(const FractionBox& a, const FractionBox& b, double width, double height) {
  const double dx = std::max({0.0, a.x - (b.x + b.width), b.x - (a.x + a.width)}) * width;
  const double dy = std::max({0.0, a.y - (b.y + b.height), b.y - (a.y + a.height)}) * height;
  return std::hypot(dx, dy);
}

}  // namespace

bool NamesTube(const std::string& designator) {
  const std::vector<std::string> forms = DesignatorForms(designator);
  return std::any_of(forms.begin(), forms.end(),
                     [](const std::string& form) { return form.size() > 1 && form[0] == 'V' && IsDigit(form[1]); });
}

std::string DesignatorBeside(const PageRecord& page, const Sighting& tube) {
  for (const Entry& entry : page.entries) {
    if (!entry.designator.empty() && OverlapOfSmaller(entry.box, tube.box) > 0.5) {
      return WithAssembly(entry.assembly, entry.designator);
    }
  }
  const double width = page.reading.frame.scan_width;
  const double height = page.reading.frame.scan_height;
  const double lettering = std::min(tube.box.width * width, tube.box.height * height);
  double nearest = kReach * lettering;
  std::string designator;
  for (const Sighting& other : page.sightings) {
    if (other.kind != TermKind::kDesignator || !NamesTube(other.text)) continue;
    const double distance = Distance(tube.box, other.box, width, height);
    if (distance < nearest) {
      nearest = distance;
      designator = WithAssembly(other.assembly, other.text);
    }
  }
  return designator;
}

std::string WithAssembly(const std::string& assembly, const std::string& designator) {
  if (designator.empty() || assembly.empty()) return designator;
  const bool printed_so = designator.size() > assembly.size() && designator.compare(0, assembly.size(), assembly) == 0;
  return printed_so ? designator : assembly + designator;
}

std::string NameOf(const Entry& entry) {
  if (!entry.designator.empty() || entry.item.empty()) return WithAssembly(entry.assembly, entry.designator);
  return (entry.assembly.empty() ? "" : entry.assembly + " ") + "item " + entry.item;
}

}  // namespace benchleaf
