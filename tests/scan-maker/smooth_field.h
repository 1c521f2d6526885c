// A random landscape over a picture: shading of paper, strength of ink.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SMOOTH_FIELD_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SMOOTH_FIELD_H_

#include "scan-maker/seeded_random.h"

#include <vector>

namespace benchleaf::scanmaker {

// Random values, -1 to 1, on the knots of a square grid, with straight ramps between.
class SmoothField {
 public:
  // For a picture of that size; `cell` is the distance of the knots in px, at least 1.
  SmoothField(int width, int height, int cell, SeededRandom& random);

  // The values of row y, one a pixel, into `values`, which is made as long as the picture is wide.
  void Row(int y, std::vector<float>& values) const;

 private:
  int width_;
  int cell_;
  int columns_;
  std::vector<float> knots_;
};

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SMOOTH_FIELD_H_
