// Takes the rings of callouts away from the letters in them. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_CALLOUT_RINGS_H_
#define BENCHLEAF_SRC_CLEAN_CALLOUT_RINGS_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

// Rubs out of `ink` circles with something in them. To be done before lines are taken out, which would open the rings.
void RubOutRings(double cap_px, InkImage& ink);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_CALLOUT_RINGS_H_
