// Strokes on a page that is drawn already.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_PEN_STROKES_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_PEN_STROKES_H_

#include "benchleaf/core/image.h"

#include <cstdint>

namespace benchleaf::scanmaker {

struct Stroke {
  double x = 0;
  double y = 0;
  double to_x = 0;
  double to_y = 0;
};

// A round dab; what is darker stays.
void Dab(GreyImage& image, double x, double y, double radius, std::uint8_t level);

// Dabs of `radius` px along the stroke, `step` px apart.
void DrawDabs(GreyImage& image, const Stroke& stroke, double step, double radius, std::uint8_t level);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_PEN_STROKES_H_
