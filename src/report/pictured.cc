#include "benchleaf/report/pictured.h"

#include "report/place.h"

#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

namespace benchleaf {

std::string PicturedText(const Pictured& pictured) {
  std::string text = pictured.spot_file;
  if (!text.empty()) text += ", ";
  text += pictured.page_file + ": ";
  if (pictured.sighting) text += pictured.sighting->text + " in ";
  if (!pictured.place.set.empty()) text += pictured.place.set + ", ";
  text += pictured.place.file + ", page " + PageWords(pictured.place);
  if (pictured.box) text += ", " + WhereOnPage(*pictured.box);
  if (pictured.turned != 0) {
    if (pictured.box) text += " of the page as scanned";
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
  if (pictured.sighting) {
    SetSighting(object, *pictured.sighting);
  } else if (pictured.box) {
    object.Set("box", ToJson(*pictured.box));
    object.Set("where", WhereOnPage(*pictured.box));
  }
  return object.Dump() + "\n";
}

}  // namespace benchleaf
