#include "benchleaf/clean/clean_page.h"

#include "clean/callout_lines.h"
#include "clean/callout_rings.h"
#include "clean/leader_cuts.h"
#include "clean/letter_mending.h"
#include "clean/lettering_height.h"
#include "clean/page_edges.h"
#include "clean/page_skew.h"
#include "clean/pale_lettering.h"
#include "clean/text_rows.h"
#include "clean/title_mending.h"
#include "clean/white_lettering.h"

#include "benchleaf/pixels/lines.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace benchleaf {
namespace {

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

// Whether the scan has levels between ink and paper. Black-and-white ones have steps for edges, which must be smoothed
// away when they are enlarged.
bool HasGreys(const GreyImage& image) {
  constexpr int kNearlyBlack = 32;
  constexpr int kNearlyWhite = 223;
  constexpr double kFewest = 0.02;  // of the page
  const auto between = std::count_if(image.pixels.begin(), image.pixels.end(),
                                     [](std::uint8_t level) { return level > kNearlyBlack && level < kNearlyWhite; });
  return static_cast<double>(between) > kFewest * static_cast<double>(image.pixels.size());
}

GreyImage BroughtTo(GreyImage level, double scale, bool greys) {
  if (scale <= 1) {
    return Shrunk(level, scale);
  }
  if (greys) {
    return Enlarged(level, scale);
  }
  constexpr double kStepsShowFrom = 1.4;
  level = Scaled(std::move(level), scale);
  return scale > kStepsShowFrom ? Blurred(std::move(level), 1) : level;
}

// What a page's own ink says of it before it is scaled.
struct Native {
  double cap = 0;  // px
  double skew_degrees = 0;
};

Native MeasureNative(const GreyImage& even, double expected_cap) {
  constexpr double kDust = 0.6;  // of the capital height
  const Components components = FindComponents(Thresholded(even, kInkBelow));
  // Scans claim any resolution.
  const double contradicting = ContradictingHeight(components, expected_cap);
  const double cap = EstimateCapHeight(components, contradicting > 0 ? contradicting : expected_cap);
  return {cap, SkewOf(components, even.width, even.height, kDust * cap)};
}

// Whether there are many letters and most of them stand in rows. Such a page has no callouts, and its letters touch
// without any.
bool IsPageOfRows(const CleanPage& page) {
  constexpr int kFewestLetters = 500;  // a locator whose labels touch leaders has little but its titles
  CleanPage measured;
  measured.frame = page.frame;
  measured.measures = page.measures;
  measured.components = FindComponents(page.ink);
  MeasureText(measured);
  return measured.measures.glyphs >= kFewestLetters && StandsInRows(measured.measures);
}

}  // namespace

CleanPage MakeCleanPage(const GreyImage& image, double dpi, int orientation, const PageSteps& steps) {
  CleanPage page;
  page.steps = steps;
  page.frame.scan_width = image.width;
  page.frame.scan_height = image.height;
  page.frame.dpi = dpi;
  page.frame.orientation = orientation;

  const double expected = ExpectedCap(image, dpi);
  GreyImage level = Turned(steps.surroundings ? WithoutSurroundings(image) : image, orientation);
  if (steps.even_ground) {
    level = WithEvenGround(std::move(level), static_cast<int>(std::lround(3.5 * expected)));
  }
  const Native native = MeasureNative(level, expected);
  page.frame.skew_degrees = steps.deskew ? native.skew_degrees : 0;
  const double largest = std::sqrt(kMostLevelPx / (1.0 * level.width * level.height));
  const double scale = std::min(std::clamp(kLevelCapPx / native.cap, 0.4, 3.0), largest);
  // A little more or less than the wanted height reads as well; scaling would only blur it.
  if (scale < 0.85 || scale > 1.2) {
    page.frame.scale = scale;
    level = BroughtTo(std::move(level), scale, HasGreys(image));
  }
  page.frame.level_width = level.width;
  page.frame.level_height = level.height;
  constexpr double kLevelEnough = 0.04;
  if (std::abs(page.frame.skew_degrees) > kLevelEnough) {
    level = Leveled(std::move(level), page.frame.skew_degrees);
  } else {
    page.frame.skew_degrees = 0;
  }

  page.ink = Binarized(level, 20, 0.22);
  page.measures.cap_height_px = native.cap * page.frame.scale;
  const double cap = page.measures.cap_height_px;
  if (steps.white) {
    TurnWhiteLettering(cap, level, page.ink);
  }
  const bool callouts = steps.callout_lines && !IsPageOfRows(page);
  InkImage ringless;
  if (callouts) {
    ringless = page.ink;
    page.rings = RubOutRings(cap, ringless);
  }
  const InkImage& lettering = callouts ? ringless : page.ink;
  LineSplit split =
      SplitLines(lettering, static_cast<int>(std::lround(2.2 * cap)), 5, static_cast<int>(std::lround(0.28 * cap)) + 4);
  if (!steps.lines) {
    split.rest = lettering;
  } else if (steps.mending) {
    MendLetters(lettering, cap, split);
  }
  if (steps.pale) {
    AddPaleLetters(level, cap, split.rest);
  }
  page.grey = std::move(level);
  page.components = FindComponents(split.rest);
  if (callouts && CutLeaders(page.components, cap, split.rest)) {
    page.components = FindComponents(split.rest);
  }
  if (callouts && RubOutCalloutLines(page.components, cap, split.rest)) {
    page.components = FindComponents(split.rest);
  }
  if (steps.lines && steps.mending && MendTitles(lettering, cap, split.rest)) {
    page.components = FindComponents(split.rest);
  }
  page.measures.cap_height_px = EstimateCapHeight(page.components, cap);
  page.measures.line_ink = split.line_ink;
  page.measures.long_lines = split.long_horizontal + split.long_vertical;
  MeasureText(page);
  return page;
}

}  // namespace benchleaf
