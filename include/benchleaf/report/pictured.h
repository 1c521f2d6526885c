// What a written picture shows.

#ifndef BENCHLEAF_REPORT_PICTURED_H_
#define BENCHLEAF_REPORT_PICTURED_H_

#include "benchleaf/store/index_reader.h"

#include <optional>
#include <string>
#include <vector>

namespace benchleaf {

struct RingedPlace {
  FractionBox box;                   // on the page as scanned
  std::optional<Sighting> sighting;  // what the box holds, when a term was asked for
};

// One page, or spots on it.
struct Pictured {
  PagePlace place;
  std::vector<RingedPlace> ringed;
  bool together = false;  // all that was found on the page is ringed in one picture, however many places these are
  int turned = 0;         // degrees clockwise that the scan was turned to stand upright
  std::string spot_file;  // the spots with their surroundings; empty: not written
  std::string page_file;  // the whole page; empty: not written
};

// One line, with a newline: the files, and the places that they show.
std::string PicturedText(const Pictured& pictured);

// One {"type":"picture"} object, with a newline. The place is told in the object itself, or, where `together` is set,
// all of them in its field "places".
std::string PicturedJson(const Pictured& pictured);

// One place of a contact sheet.
struct SheetPlace {
  PagePlace place;
  Sighting sighting;
  std::string designator;  // of a tube, as far as it is known
  int turned = 0;          // as in Pictured
};

// A sheet's title: "6AU6: 18 places in 3 sets".
std::string SheetTitle(const std::string& term, const std::vector<SheetPlace>& places);

// What stands under a place's picture: its set; what is seen there and which part it is; the page.
struct SheetCaption {
  std::string set;   // "Quillmark 84"
  std::string what;  // "V3  6AU6A"
  std::string page;  // "p. 3 (printed 5-1), schematic"
};
SheetCaption CaptionOf(const SheetPlace& place);

// One line, with a newline: the file and how many places it shows.
std::string SheetText(const std::string& file, const std::vector<SheetPlace>& places);

// One {"type":"sheet"} object, with a newline: the file, and its places in the order in which they stand.
std::string SheetJson(const std::string& file, const std::vector<SheetPlace>& places);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_PICTURED_H_
