// Letters, whole or in pieces, from the components of a page. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_GLYPHS_H_
#define BENCHLEAF_SRC_CLEAN_GLYPHS_H_

#include "benchleaf/clean/components.h"

#include <cstddef>
#include <vector>

namespace benchleaf {

// A letter, or a few that touch. Boxes are seen along the text's direction: `x` runs along it, so that lying and
// standing text are one case.
struct Glyph {
  Box box;
  std::vector<std::size_t> components;
};

// A box of the page as it is seen along text of the given direction, and back.
Box AlongText(const Box& box, bool standing);

// Whether something of this box and so much ink may be a letter, or a few that touch, where capitals are `cap` px high.
bool IsTextSized(const Box& box, int ink, double cap);

// All that may be letters of text that runs in one direction: components of a letter's size, and components that are
// too small for one, together with those next to which they lie, as long as they do not grow higher than a letter.
std::vector<Glyph> FindGlyphs(const Components& components, double cap, bool standing);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_GLYPHS_H_
