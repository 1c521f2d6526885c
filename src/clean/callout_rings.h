// Takes the rings of callouts away from the letters in them. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_CALLOUT_RINGS_H_
#define BENCHLEAF_SRC_CLEAN_CALLOUT_RINGS_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/image.h"

#include <vector>

namespace benchleaf {

// Rubs out of `ink` circles with something in them, and gives the boxes round these, px. To be done before lines are
// taken out, which would open the rings.
std::vector<Box> RubOutRings(double cap_px, InkImage& ink);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_CALLOUT_RINGS_H_
