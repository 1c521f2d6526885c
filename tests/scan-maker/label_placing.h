// Finds room for the lettering of a part among symbols, wires and other lettering.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_LABEL_PLACING_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_LABEL_PLACING_H_

#include "benchleaf/core/geometry.h"

#include <vector>

namespace benchleaf::scanmaker {

// The lettering to be placed: a block of lines beside, above or below its part.
struct LabelBlock {
  Box part;              // px
  bool upright = false;  // the part stands upright: beside it is better than above
  bool turnable = true;  // the block may be turned along an upright part
  double width = 0;      // of the block when upright, px
  double height = 0;
  double cap_height = 0;  // of its letters, px
};

struct Placement {
  Box box;
  int turn = 0;     // 0, 90 or 270 degrees clockwise
  double cost = 0;  // 0: nothing is touched
};

// What is already on the sheet.
struct Obstacles {
  int width = 0;  // of the sheet, px
  int height = 0;
  std::vector<Box> solids;
  std::vector<Box> wires;
};

// The first of the usual places that touches nothing, else the one that touches least. `first_turn` (0, 90 or 270
// degrees) is tried before the others.
Placement PlaceLabel(const LabelBlock& block, const Obstacles& obstacles, int first_turn);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_LABEL_PLACING_H_
