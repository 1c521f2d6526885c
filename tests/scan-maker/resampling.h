// Blurring, and turning and scaling, of grey pictures in whole numbers, so that every machine makes the same bytes.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_RESAMPLING_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_RESAMPLING_H_

#include "benchleaf/core/image.h"

namespace benchleaf::scanmaker {

// Gaussian blur, `sigma` in px; the border is repeated outwards.
GreyImage Blurred(const GreyImage& image, double sigma);

// x' = xx * x + xy * y + x0, y' = yx * x + yy * y + y0.
struct AffineMap {
  double xx = 1, xy = 0, x0 = 0;
  double yx = 0, yy = 1, y0 = 0;

  // REQUIRES: the map can be turned round.
  AffineMap Inverse() const;
};

// Each pixel of the result, `width` by `height`, shows `image` at the place to which `to_source` sends it (between
// pixels: mixed of four); white outside the picture.
GreyImage Resampled(const GreyImage& image, const AffineMap& to_source, int width, int height);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_RESAMPLING_H_
