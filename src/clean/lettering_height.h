// The capital height of a page's lettering, from the sizes of its components. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_LETTERING_HEIGHT_H_
#define BENCHLEAF_SRC_CLEAN_LETTERING_HEIGHT_H_

#include "benchleaf/clean/components.h"

namespace benchleaf {

// Whether the component could be a letter by its size and fill, for lettering of about `cap_px`.
bool IsGlyphLike(const Component& component, double cap_px);

// The commonest height of glyph-like components, px, weighed by height (tall letters are not speckle) and by nearness
// to `expected_px` (log-normal). Gives `expected_px` when too few components could be letters. On a page that lies on
// its side, which the letters that stand close to each other tell, the commonest width.
double EstimateCapHeight(const Components& components, double expected_px);

// What the lettering itself says, px, where it contradicts the height that the resolution makes one expect: the
// commonest height of glyph-like components that have one of their own height beside them, as letters do and symbols
// seldom; on a page that lies on its side, the commonest width of such. 0 when it does not, when a fair share of these
// has the expected height, or when they are too few.
double ContradictingHeight(const Components& components, double expected_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_LETTERING_HEIGHT_H_
