// A page fresh from the drawing board: a clean picture at 300 dpi and the exact truth about it, and the same page after
// printing, ageing and scanning.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_MADE_PAGE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_MADE_PAGE_H_

#include "scan-maker/degrade.h"
#include "scan-maker/truth.h"

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/image.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

inline constexpr double kMadeDpi = 300;

// As TruthTerm, with the box in px of the clean page.
struct MadeTerm {
  std::string kind;
  std::string text;
  Box box;
  int turn = 0;
};

// As TruthEntry, with the box of the whole row in px of the clean page.
struct MadeEntry {
  std::string designator;
  std::string assembly;
  std::string description;
  std::string part_number;
  std::string value;
  Box box;
  std::string item = {};
};

// Letters as they were put down at once: a word, or a term with the spaces in it. Box in px of the clean page.
struct PrintedText {
  std::string text;
  Box box;
  int turn = 0;
};

struct MadePage {
  GreyImage image;  // at kMadeDpi
  std::string kind;
  std::string printed_number;
  std::vector<MadeTerm> terms;
  std::vector<MadeEntry> entries;
  std::vector<PrintedText> printed;
};

// A page as it comes from the scanner. `truth.file` and `truth.page` are left for whoever writes the file.
struct ScannedPage {
  GreyImage image;
  double dpi = kMadeDpi;
  PageTruth truth;
};

// The page turned clockwise by 0, 90, 180 or 270 degrees, as one that was laid on the scanner sideways.
MadePage Laid(const MadePage& page, int degrees);

// Same page, grade, seed and changes: same bytes.
ScannedPage DegradeMade(const MadePage& page, Grade grade, std::uint64_t seed, const ScanChanges& changes = {});

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_MADE_PAGE_H_
