#include "benchleaf/report/tubes.h"

#include "report/place.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace benchleaf {
namespace {

// How far from the type its designator may stand, in heights of its lettering. Common practice sets the two beside or
// below each other, often with the stage's name between: no source.
constexpr double kReach = 6;

bool NamesTube(const std::string& designator) {
  const std::vector<std::string> forms = DesignatorForms(designator);
  return std::any_of(forms.begin(), forms.end(), [](const std::string& form) {
    return form.size() > 1 && form[0] == 'V' && form[1] >= '0' && form[1] <= '9';
  });
}

// The gap between two boxes in px of the scan: fractions of its width and of its height are not of the same length.
double Distance(const FractionBox& a, const FractionBox& b, double width, double height) {
  const double dx = std::max({0.0, a.x - (b.x + b.width), b.x - (a.x + a.width)}) * width;
  const double dy = std::max({0.0, a.y - (b.y + b.height), b.y - (a.y + a.height)}) * height;
  return std::hypot(dx, dy);
}

}  // namespace

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
      designator = other.text;
    }
  }
  return designator;
}

std::string TubesText(const std::string& asked, const std::vector<TubePlace>& places, const Look& look) {
  std::map<std::string, int> forms;
  std::set<std::string> sets;
  for (const TubePlace& place : places) {
    sets.insert(place.found.place.set);
    ++forms[place.found.sighting.text];
  }
  std::string text =
      CleanText(asked) + ": " + Counted(sets.size(), "set") + ", " + Counted(places.size(), "place") + "\n";

  Table table({{"set", Column::Align::kLeft, Column::Fit::kWrap},
               {"type"},
               {"tube"},
               {"file", Column::Align::kLeft, Column::Fit::kWrap},
               {"page"},
               {"kind"},
               {"where on the page", Column::Align::kLeft, Column::Fit::kWrap},
               {"reads", Column::Align::kLeft, Column::Fit::kWrap},
               {"sure", Column::Align::kRight},
               {"match"},
               {"same as asked"}});
  for (const TubePlace& place : places) {
    const PagePlace& page = place.found.place;
    const Sighting& sighting = place.found.sighting;
    table.Add({page.set, sighting.text, place.designator, page.file, PageWords(page), std::string(Name(page.kind)),
               WhereOnPage(sighting.box), ReadAs(sighting), Sureness(sighting.confidence),
               std::string(Name(place.found.match)), place.other_name});
  }
  text += table.Render(look);
  text += "read as:";
  const char* separator = " ";
  for (const auto& [form, count] : forms) {
    text += separator + CleanText(form) + " (" + Counted(static_cast<std::size_t>(count), "place") + ")";
    separator = ", ";
  }
  return text + "\n";
}

std::string TubesJson(const std::string& asked, const std::vector<TubePlace>& places) {
  std::string lines;
  for (const TubePlace& place : places) {
    Json object = Json::Object({{"type", "tube"}, {"asked", asked}, {"designator", place.designator}});
    SetPlace(object, place.found.place);
    SetSighting(object, place.found.sighting);
    object.Set("match", std::string(Name(place.found.match)));
    if (!place.other_name.empty()) object.Set("other_name", place.other_name);
    lines += object.Dump() + "\n";
  }
  return lines;
}

}  // namespace benchleaf
