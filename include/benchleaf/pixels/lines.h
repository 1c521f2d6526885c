// Takes straight wires and rules out of a drawing, and tells where letters may have crossed them.

#ifndef BENCHLEAF_PIXELS_LINES_H_
#define BENCHLEAF_PIXELS_LINES_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/image.h"

#include <vector>

namespace benchleaf {

// A cut across a line, one px wide, where what is left touches the line on both sides: a letter's stroke may run there.
struct LineCrossing {
  Box cut;                // px
  bool standing = false;  // the line stands, so that the cut lies
};

struct LineSplit {
  InkImage rest;  // the ink without lines
  std::vector<LineCrossing> crossings;
  double line_ink = 0;      // ink in lines over all ink: 0 to 1
  int long_horizontal = 0;  // lines of at least a twelfth of the page's width
  int long_vertical = 0;    // and of its height
};

// A line is straight ink of at least `length_px`, standing or lying; of twice that length where gaps, each shorter than
// `gap_px`, are more than a sixteenth of it. Shorter straight ink that ends on such lines with both ends, as the sides
// of a box do, goes too. Crossings are told of lines that are at most `thickest_px` thick there.
LineSplit SplitLines(const InkImage& ink, int length_px, int gap_px, int thickest_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_PIXELS_LINES_H_
