// Takes away what a scanner sees round the page. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_PAGE_EDGES_H_
#define BENCHLEAF_SRC_CLEAN_PAGE_EDGES_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

// The scan with the blackness painted over that reaches in from its edges (the open lid, the glass beside the page, the
// depth of a binding), with paper's own grey. Rules and letters that touch an edge are too thin to be taken for it, and
// what lies deeper than a seventh of the page stays: that is a picture on the page.
GreyImage WithoutBlackEdges(GreyImage scan);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_PAGE_EDGES_H_
