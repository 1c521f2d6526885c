#include "benchleaf/report/pictured.h"

#include "report/place.h"

#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

#include <algorithm>
#include <set>

namespace benchleaf {
namespace {

void SetRinged(Json& object, const RingedPlace& ringed) {
  if (ringed.sighting) {
    SetSighting(object, *ringed.sighting);
    return;
  }
  object.Set("box", ToJson(ringed.box));
  object.Set("where", WhereOnPage(ringed.box));
}

// "C112, R5 (twice)".
std::string Named(const std::vector<RingedPlace>& ringed) {
  std::vector<std::pair<std::string, int>> counted;
  for (const RingedPlace& one : ringed) {
    if (!one.sighting) continue;
    const auto known = std::find_if(counted.begin(), counted.end(),
                                    [&](const auto& entry) { return entry.first == one.sighting->text; });
    if (known == counted.end()) {
      counted.emplace_back(one.sighting->text, 1);
    } else {
      ++known->second;
    }
  }
  std::string text;
  for (const auto& [name, count] : counted) {
    if (!text.empty()) text += ", ";
    text += name;
    if (count > 1) text += " (" + std::to_string(count) + " places)";
  }
  return text;
}

}  // namespace

std::string PicturedText(const Pictured& pictured) {
  std::string text = pictured.spot_file;
  if (!text.empty() && !pictured.page_file.empty()) text += ", ";
  text += pictured.page_file + ": ";
  if (const std::string names = Named(pictured.ringed); !names.empty()) text += names + " in ";
  if (!pictured.place.set.empty()) text += pictured.place.set + ", ";
  text += pictured.place.file + ", page " + PageWords(pictured.place);
  const bool one = pictured.ringed.size() == 1;
  if (one) text += ", " + WhereOnPage(pictured.ringed.front().box);
  if (pictured.turned != 0) {
    if (one) text += " of the page as scanned";
    text += "; turned " + std::to_string(pictured.turned) + "\u00B0 to stand upright";
  }
  return CleanText(text) + "\n";
}

std::string PicturedJson(const Pictured& pictured) {
  Json object = Json::Object({{"type", "picture"},
                              {"spot_file", pictured.spot_file},
                              {"page_file", pictured.page_file},
                              {"turned", pictured.turned}});
  SetPlace(object, pictured.place);
  if (pictured.together) {
    Json places = Json::Array();
    for (const RingedPlace& ringed : pictured.ringed) {
      Json place = Json::Object();
      SetRinged(place, ringed);
      places.Add(place);
    }
    object.Set("places", places);
  } else if (!pictured.ringed.empty()) {
    SetRinged(object, pictured.ringed.front());
  }
  return object.Dump() + "\n";
}

std::string SheetTitle(const std::string& term, const std::vector<SheetPlace>& places) {
  std::set<std::string> sets;
  for (const SheetPlace& place : places) sets.insert(place.place.set);
  return CleanText(term) + ": " + Counted(places.size(), "place") + " in " + Counted(sets.size(), "set");
}

SheetCaption CaptionOf(const SheetPlace& place) {
  const std::string& text = place.sighting.text;
  return {CleanText(place.place.set),
          CleanText(place.designator.empty() || place.designator == text ? text : place.designator + "  " + text),
          CleanText("p. " + PageWords(place.place) + ", " + std::string(Name(place.place.kind)))};
}

std::string SheetText(const std::string& file, const std::vector<SheetPlace>& places) {
  return CleanText(file + ": " + Counted(places.size(), "place")) + "\n";
}

std::string SheetJson(const std::string& file, const std::vector<SheetPlace>& places) {
  Json shown = Json::Array();
  for (const SheetPlace& one : places) {
    Json place = Json::Object({{"designator", one.designator}, {"turned", one.turned}});
    SetPlace(place, one.place);
    SetSighting(place, one.sighting);
    shown.Add(place);
  }
  return Json::Object({{"type", "sheet"}, {"file", file}, {"places", shown}}).Dump() + "\n";
}

}  // namespace benchleaf
