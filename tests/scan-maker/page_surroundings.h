// What a scanner sees besides the page's own matter: holes, borders and the pages beside it.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_PAGE_SURROUNDINGS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_PAGE_SURROUNDINGS_H_

#include "scan-maker/made_page.h"

#include <cstdint>
#include <utility>

namespace benchleaf::scanmaker {

// The sheet of paper cut or extended to `frame`, px of the page; what comes in has the level `fill`. Terms and rows of
// which less than a quarter would be left are dropped, the boxes of others are cut.
MadePage Framed(const MadePage& page, const Box& frame, std::uint8_t fill);

// Three punched holes at the left edge, dark, with their shadows; what stood there is lost.
MadePage WithPunchHoles(const MadePage& page);

// The open lid: black round the page, of other width on each side, and none too straight.
MadePage WithBlackBorder(const MadePage& page, std::uint64_t seed);

// To the right a strip of the page beside it, cut through its words, which are no part of the truth.
MadePage WithNeighbour(const MadePage& page, std::uint64_t seed);

// Two pages of a book as one scan. The printed numbers are joined: "12, 13"; the kind is that of the first.
MadePage TwoUp(const MadePage& left, const MadePage& right);

// A fold-out scanned in two halves that both show its middle, `overlap` of its width.
std::pair<MadePage, MadePage> Halves(const MadePage& page, double overlap);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_PAGE_SURROUNDINGS_H_
