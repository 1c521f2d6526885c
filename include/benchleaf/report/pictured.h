// What a written picture shows.

#ifndef BENCHLEAF_REPORT_PICTURED_H_
#define BENCHLEAF_REPORT_PICTURED_H_

#include "benchleaf/store/index_reader.h"

#include <optional>
#include <string>

namespace benchleaf {

struct Pictured {
  PagePlace place;
  std::optional<FractionBox> box;    // what is ringed, on the page as scanned; nothing: no ring
  std::optional<Sighting> sighting;  // what the box holds, when a term was asked for
  int turned = 0;                    // degrees clockwise that the scan was turned to stand upright
  std::string spot_file;             // the spot with its surroundings; empty when nothing is ringed
  std::string page_file;             // the whole page
};

// One line, with a newline: the files, and the place that they show.
std::string PicturedText(const Pictured& pictured);

// One {"type":"picture"} object, with a newline.
std::string PicturedJson(const Pictured& pictured);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_PICTURED_H_
