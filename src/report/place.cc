#include "report/place.h"

#include "benchleaf/report/where.h"

#include <cmath>

namespace benchleaf {

std::string PageWords(const PagePlace& place) {
  std::string page = std::to_string(place.page);
  if (place.printed_number.empty() || place.printed_number == page) return page;
  return page + " (printed " + place.printed_number + ")";
}

std::string ShortPlace(const PagePlace& place) { return place.file + " p. " + PageWords(place); }

std::string Sureness(double confidence) { return std::to_string(std::lround(confidence * 100)) + " %"; }

std::string ReadAs(const Sighting& sighting) { return sighting.read == sighting.text ? std::string() : sighting.read; }

void SetPlace(Json& object, const PagePlace& place) {
  object.Set("set", place.set);
  object.Set("manual", place.manual);
  object.Set("file", place.file);
  object.Set("page", place.page);
  object.Set("printed_page", place.printed_number);
  object.Set("page_kind", std::string(Name(place.kind)));
}

void SetSighting(Json& object, const Sighting& sighting) {
  object.Set("kind", std::string(Name(sighting.kind)));
  object.Set("text", sighting.text);
  object.Set("read", sighting.read);
  object.Set("box", ToJson(sighting.box));
  object.Set("turn", sighting.turn);
  object.Set("where", WhereOnPage(sighting.box));
  object.Set("confidence", sighting.confidence);
  object.Set("assembly", sighting.assembly);
}

}  // namespace benchleaf
