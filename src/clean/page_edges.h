// Takes away what a scanner sees round the page. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_PAGE_EDGES_H_
#define BENCHLEAF_SRC_CLEAN_PAGE_EDGES_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

// The scan with all that is no part of the page painted over in the grey of its paper: blackness that reaches in from
// the edges (the open lid, the glass beside the page), shadows of bindings, and the strip of another page beyond one.
// Rules and letters that touch an edge are too thin to be taken for blackness, and what lies deeper than a seventh of
// the page stays: that is a picture on the page.
GreyImage WithoutSurroundings(GreyImage scan);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_PAGE_EDGES_H_
