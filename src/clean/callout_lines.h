// Takes the rings and leaders of callouts off the letters that they touch. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_CALLOUT_LINES_H_
#define BENCHLEAF_SRC_CLEAN_CALLOUT_LINES_H_

#include "benchleaf/clean/components.h"
#include "benchleaf/core/image.h"

namespace benchleaf {

// Rubs out of `ink` circles with something in them, and straight thin strokes in any direction that are longer than a
// letter's, where they are parts of larger components. `components` are the ink's. True when anything was rubbed out.
bool RubOutCalloutLines(const Components& components, double cap_px, InkImage& ink);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_CALLOUT_LINES_H_
