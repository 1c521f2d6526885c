#include "benchleaf/report/tubes.h"

#include "report/place.h"

#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

#include <map>
#include <set>

namespace benchleaf {

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
