// Judges the places where text may stand, as clean/ finds them, against the places where text stands: what no candidate
// holds cannot be read.

#ifndef BENCHLEAF_TESTS_BENCH_COVERAGE_H_
#define BENCHLEAF_TESTS_BENCH_COVERAGE_H_

#include "scan-maker/degrade.h"
#include "scan-maker/made_page.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/core/geometry.h"

#include <array>
#include <string>
#include <vector>

namespace benchleaf::bench {

// A text of the page, on the level page.
struct TextPlace {
  std::string kind;  // as in scanmaker::TruthTerm
  std::string text;
  Box box;  // px of the level page, of the ink as it was drawn
  bool standing = false;
};

// The texts of a made page that was degraded to `page` and then cleaned.
std::vector<TextPlace> PlacesOnLevelPage(const scanmaker::MadePage& made, const scanmaker::DegradedPage& page,
                                         const PageFrame& frame);

enum class Cover {
  kFits,    // a candidate holds it and little else
  kMerged,  // only part of a larger candidate
  kCut,     // candidates hold parts of it
  kAbsent,  // no candidate, or only scraps of it, or only across its direction
};

constexpr std::array<const char*, 4> kCoverNames = {"fits", "merged", "cut", "absent"};

// The best that one of the candidates gives. A candidate fits when it runs in the text's direction, holds 85 % of its
// length and 70 % of its breadth, and is at most 1.3 times as long and twice as broad; it cuts the text when it holds
// at least a third of it.
Cover CoverOf(const TextPlace& place, const std::vector<TextString>& candidates);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_COVERAGE_H_
