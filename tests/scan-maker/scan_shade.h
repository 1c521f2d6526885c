// Shadows where paper lifts off the glass. They fall on the scan, not on the print.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SCAN_SHADE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SCAN_SHADE_H_

#include "scan-maker/made_page.h"

namespace benchleaf::scanmaker {

// A page that curls up at its left, right and lower edge: it darkens over half an inch. On a black-and-white scan,
// `one_bit`, what is darker than half is black.
void ShadeEdges(ScannedPage& scan, bool one_bit);

// The depth of a binding at `place`, a share of the scan's width, down the whole scan; `width_in` inches to either
// side.
void ShadeBinding(ScannedPage& scan, double place, double width_in, bool one_bit);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SCAN_SHADE_H_
