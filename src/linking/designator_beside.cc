#include "benchleaf/linking/designator_beside.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <cmath>

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

TubeDesignators::TubeDesignators(const std::vector<Entry>& entries, const std::vector<Sighting>& sightings,
                                 const PageFrame& frame)
    : width_(frame.scan_width), height_(frame.scan_height) {
  for (const Entry& entry : entries) {
    if (!entry.designator.empty()) rows_.push_back(&entry);
  }
  for (const Sighting& sighting : sightings) {
    if (sighting.kind == TermKind::kDesignator && NamesTube(sighting.text)) tubes_.push_back(&sighting);
  }
}

std::string TubeDesignators::Beside(const Sighting& tube) const {
  for (const Entry* row : rows_) {
    if (OverlapOfSmaller(row->box, tube.box) > 0.5) return WithAssembly(row->assembly, row->designator);
  }
  const double lettering = std::min(tube.box.width * width_, tube.box.height * height_);
  double nearest = kReach * lettering;
  const Sighting* beside = nullptr;
  for (const Sighting* other : tubes_) {
    const double distance = Distance(tube.box, other->box, width_, height_);
    if (distance < nearest) {
      nearest = distance;
      beside = other;
    }
  }
  return beside != nullptr ? WithAssembly(beside->assembly, beside->text) : std::string();
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
