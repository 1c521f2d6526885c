#include "benchleaf/clean/clean_page.h"

#include "clean/callout_lines.h"
#include "clean/letter_mending.h"
#include "clean/lettering_height.h"
#include "clean/page_edges.h"
#include "clean/pale_lettering.h"
#include "clean/text_rows.h"
#include "clean/white_lettering.h"

#include "benchleaf/pixels/lines.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace benchleaf {
namespace {

constexpr double kMaxSkewDegrees = 6;

// No page is made larger than this: a fold-out of 12,000 x 9,000 px must be read in 400 MB.
constexpr double kMostLevelPx = 110e6;

// The capital height to expect at a resolution: schematics are lettered at about 2 mm, 24 px at 300 dpi. Claims under
// 100 dpi are commonly wrong (a page box in points equal to the pixels reads as 72), so that the page's size is asked
// instead, taken as 11 inches.
double ExpectedCap(const GreyImage& image, double dpi) {
  const double believed = dpi >= 100 ? dpi : std::max(image.width, image.height) / 11.0;
  return std::clamp(kLevelCapPx * believed / 300, 6.0, 60.0);
}

// On even ground one threshold serves the whole page, well enough to measure by.
constexpr std::uint8_t kInkBelow = 160;

// Rows of text and lying wires tell the skew, and so do standing wires; the surer of the two is believed.
double SkewOf(const GreyImage& even) {
  const double factor = std::min(1.0, 2400.0 / std::max(even.width, even.height));
  const InkImage ink = Thresholded(factor < 1 ? Shrunk(even, factor) : even, kInkBelow);
  const Skew rows = FindSkew(ink, kMaxSkewDegrees);
  const Skew columns = FindSkew(OnItsSide(ink), kMaxSkewDegrees);
  const Skew& surer = columns.confidence > rows.confidence ? columns : rows;
  // Two that agree are right although neither may be sure; 2.5 is Leptonica's own bound for one alone.
  constexpr double kAgree = 0.25;
  constexpr double kSure = 2.5;
  constexpr double kUnsure = 1.3;
  const bool agree =
      std::abs(rows.degrees - columns.degrees) <= kAgree && std::min(rows.confidence, columns.confidence) >= kUnsure;
  return agree || surer.confidence >= kSure ? surer.degrees : 0;
}

}  // namespace

CleanPage MakeCleanPage(const GreyImage& image, double dpi, int orientation) {
  CleanPage page;
  page.frame.scan_width = image.width;
  page.frame.scan_height = image.height;
  page.frame.dpi = dpi;
  page.frame.orientation = orientation;

  const double expected = ExpectedCap(image, dpi);
  GreyImage level =
      WithEvenGround(Turned(WithoutBlackEdges(image), orientation), static_cast<int>(std::lround(3.5 * expected)));
  const double native_cap = EstimateCapHeight(FindComponents(Thresholded(level, kInkBelow)), expected);
  const double largest = std::sqrt(kMostLevelPx / (1.0 * level.width * level.height));
  const double scale = std::min(std::clamp(kLevelCapPx / native_cap, 0.4, 3.0), largest);
  // A little more or less than the wanted height reads as well; scaling would only blur it.
  if (scale < 0.85 || scale > 1.2) {
    page.frame.scale = scale;
    level = scale < 1 ? Shrunk(level, scale) : Scaled(std::move(level), scale);
    if (scale > 1.4) {
      level = Blurred(std::move(level), 1);
    }
  }
  page.frame.level_width = level.width;
  page.frame.level_height = level.height;
  page.frame.skew_degrees = SkewOf(level);
  constexpr double kLevelEnough = 0.04;
  if (std::abs(page.frame.skew_degrees) > kLevelEnough) {
    level = Leveled(std::move(level), page.frame.skew_degrees);
  } else {
    page.frame.skew_degrees = 0;
  }

  page.ink = Binarized(level, 20, 0.22);
  page.measures.cap_height_px = native_cap * page.frame.scale;
  const double cap = page.measures.cap_height_px;
  TurnWhiteLettering(cap, level, page.ink);
  LineSplit split =
      SplitLines(page.ink, static_cast<int>(std::lround(2.2 * cap)), 5, static_cast<int>(std::lround(0.28 * cap)) + 4);
  MendLetters(page.ink, cap, split);
  AddPaleLetters(level, page.ink, cap, split.rest);
  page.grey = std::move(level);
  page.components = FindComponents(split.rest);
  if (RubOutCalloutLines(page.components, cap, split.rest)) {
    page.components = FindComponents(split.rest);
  }
  page.measures.cap_height_px = EstimateCapHeight(page.components, cap);
  page.measures.line_ink = split.line_ink;
  page.measures.long_lines = split.long_horizontal + split.long_vertical;
  MeasureText(page);
  return page;
}

}  // namespace benchleaf
