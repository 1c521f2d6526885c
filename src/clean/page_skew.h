// How far a page stands askew. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_PAGE_SKEW_H_
#define BENCHLEAF_SRC_CLEAN_PAGE_SKEW_H_

#include "benchleaf/clean/components.h"

namespace benchleaf {

// The clockwise turn, in degrees, that makes a page of `width` x `height` px level; up to six to either side. Rows of
// text and straight wires tell it, in nine parts of the page, lying and standing: where most agree the page is askew,
// whatever a scratch or the edge of a tape says in some of them. Ink shorter than `least_px` (dust, the cracks of a
// fold) has no say. 0 where nothing tells.
double SkewOf(const Components& components, int width, int height, double least_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_PAGE_SKEW_H_
