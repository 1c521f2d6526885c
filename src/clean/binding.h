// The shadow of a binding, and the page that shows beyond it. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_BINDING_H_
#define BENCHLEAF_SRC_CLEAN_BINDING_H_

#include "clean/page_cells.h"

namespace benchleaf {

// Marks shadows that run down the whole page, wider than any rule and light to both sides: those in the middle of a
// spread themselves, and at a side (in its outer sixth) what lies beyond them too, for it is a strip of another page.
// Empty when there is none.
CellMask BindingShadows(const PageCells& cells);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_BINDING_H_
