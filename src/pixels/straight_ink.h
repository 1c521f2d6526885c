// Finds straight ink along the rows or the columns of a picture. Private to pixels/.

#ifndef BENCHLEAF_SRC_PIXELS_STRAIGHT_INK_H_
#define BENCHLEAF_SRC_PIXELS_STRAIGHT_INK_H_

#include "pixels/pix.h"

namespace benchleaf {

struct LineRule {
  int length_px;  // the least
  int gap_px;     // gaps are shorter
};

// Straight ink of the least length, gaps filled; of twice that length where gaps are more than a sixteenth of it.
PixHandle StraightInk(Pix* ink, const LineRule& rule, bool standing);

// Adds to `lines` straight ink of the least length between two of the `others`, lines that cross it, where gaps are at
// most a sixteenth of it: the sides of a box between its top and its foot.
void AddSides(Pix* ink, Pix* others, const LineRule& rule, bool standing, Pix* lines);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_PIXELS_STRAIGHT_INK_H_
