// Looks whether there is ink on a picture.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_INK_TEST_SUPPORT_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_INK_TEST_SUPPORT_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/image.h"

namespace benchleaf::scanmaker {

// True when the box lies on the picture and some pixel in it is dark.
inline bool HoldsInk(const GreyImage& image, const Box& box) {
  if (box.empty() || box.x < 0 || box.y < 0 || box.right() > image.width || box.bottom() > image.height) {
    return false;
  }
  for (int y = box.y; y < box.bottom(); ++y) {
    for (int x = box.x; x < box.right(); ++x) {
      if (image.row(y)[x] < 128) {
        return true;
      }
    }
  }
  return false;
}

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_INK_TEST_SUPPORT_H_
