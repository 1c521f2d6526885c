// What stands on every page of a manual: the running head, the foot line and the page's number.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_PAGE_FURNITURE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_PAGE_FURNITURE_H_

#include "scan-maker/sheet.h"

#include <string>

namespace benchleaf::scanmaker {

// Every page of a made manual says so.
inline const std::string kSampleMark = "INVENTED MANUAL - SAMPLE DATA";

// A letter page at 300 dpi, 8.5 x 11 inches.
inline constexpr int kPageWidth = 2550;
inline constexpr int kPageHeight = 3300;

struct PageFurniture {
  std::string head;    // "LARKFIELD MODEL 512"; empty for none
  std::string prefix;  // before the page's number: "8-" for 8-17
  int number = 1;
  TextStyle text;  // of the page

  std::string printed_number() const { return prefix + std::to_string(number); }
};

// The part of the page that is left for its matter, px.
struct TypeArea {
  double left = 240;
  double right = kPageWidth - 200;
  double top = 330;
  double bottom = kPageHeight - 300;

  double width() const { return right - left; }
};

// Letters head, foot line and number.
void PutFurniture(Sheet& sheet, const PageFurniture& furniture);

// The height from one line of text to the next, px.
double LinePitch(const TextStyle& style);

// A text style of that lettering at the size of typed and printed manuals.
TextStyle UsualTextStyle(Lettering lettering);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_PAGE_FURNITURE_H_
