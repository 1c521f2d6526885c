// How locators and old drawings letter their designators and item numbers otherwise than plainly.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_CALLOUTS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_CALLOUTS_H_

#include "scan-maker/made_page.h"

#include <cstdint>

namespace benchleaf::scanmaker {

// Each designator on a paper disc with a ring round it, that its letters touch or almost touch, and a leader away from
// the ring. Those that have another too near stay as they are.
MadePage WithRings(const MadePage& page, std::uint64_t seed);

// A leader from each designator, that begins at the ink of one of its letters.
MadePage WithLeaders(const MadePage& page, std::uint64_t seed);

// Every other designator turned by 180 degrees in its place.
MadePage WithUpended(const MadePage& page);

// Each designator white on a black label, in heavier strokes.
MadePage WithWhiteOnBlack(const MadePage& page);

// All designators pale, a third as dark as the rest: what a layered scan keeps in its ground only.
MadePage WithPale(const MadePage& page);

// The letters of lying designators set apart by 0.55 capital heights more than they were ("R 1 2"), where there is
// room.
MadePage WithSpacedLetters(const MadePage& page);

// A dash between the letters of each designator and its figures ("R-12"), as sets of the thirties and forties have it.
// Where there is no room the whole is lettered narrower.
MadePage WithDashes(const MadePage& page);

// Two photographs on the page, as a copier leaves them: ragged black blobs and coarse dots. Designators there stand on
// patches of paper; what else stood there is lost.
MadePage WithPhotographs(const MadePage& page, std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_CALLOUTS_H_
