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

// A line is ink in which a brick of `length_px` x 1 fits, standing or lying, once gaps of up to `gap_px` along it are
// closed. Ink of a line stays where the rest, closed across it over `repair_px`, covers it: there a letter stands on
// it.
LineSplit SplitLines(const InkImage& ink, int length_px, int gap_px, int repair_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_PIXELS_LINES_H_
