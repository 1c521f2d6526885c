// The sheets on which reading is measured, and which of them may be looked at while the reader is being made better.

#ifndef BENCHLEAF_TESTS_OUTSIDE_OUTSIDE_PAGES_H_
#define BENCHLEAF_TESTS_OUTSIDE_OUTSIDE_PAGES_H_

#include "scan-maker/lettering.h"
#include "scan-maker/made_page.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf::outside {

enum class Half {
  kDevelopment,  // to look at and to choose settings by
  kHeldOut,      // only for the final figures: no setting is chosen by it
  kPractice,     // further sheets to choose settings by; they count in no figure
};

struct OutsidePage {
  Half half;
  std::string sheet;  // below KicadDemos()
  scanmaker::Lettering lettering;
  std::uint64_t seed;  // of the hand lettering, and of the degrading
  int designators;     // that show on the sheet
};

// Twelve sheets, six of either half; no project stands in both. They hold discrete parts for the most: left out are
// sheets of wide connectors and arrays, whose pins bear names in the form of designators by the hundred. The sheets for
// practice hold some of those; none of their projects is held out.
const std::vector<OutsidePage>& OutsidePages();

// Where Debian's kicad-demos lie.
std::filesystem::path KicadDemos();

scanmaker::MadePage Draw(const OutsidePage& page);

}  // namespace benchleaf::outside

#endif  // BENCHLEAF_TESTS_OUTSIDE_OUTSIDE_PAGES_H_
