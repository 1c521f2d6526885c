// Takes straight wires and rules out of a drawing without cutting the letters that touch them.

#ifndef BENCHLEAF_PIXELS_LINES_H_
#define BENCHLEAF_PIXELS_LINES_H_

#include "benchleaf/core/image.h"

namespace benchleaf {

struct LineSplit {
  InkImage rest;            // the ink without lines, letters that crossed one repaired
  double line_ink = 0;      // ink in lines over all ink: 0 to 1
  int long_horizontal = 0;  // lines of at least a twelfth of the page's width
  int long_vertical = 0;    // and of its height
};

// A line is straight ink of at least `length_px`, standing or lying; of twice that length where gaps, each shorter than
// `gap_px`, are more than a sixteenth of it. Shorter straight ink that ends on such lines with both ends, as the sides
// of a box do, goes too. Ink of a line up to `repair_px` thick stays where ink that remains touches it from both sides:
// there a letter's stroke crosses it.
LineSplit SplitLines(const InkImage& ink, int length_px, int gap_px, int repair_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_PIXELS_LINES_H_
