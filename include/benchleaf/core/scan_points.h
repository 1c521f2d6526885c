// Points of the level page on the scan, for what must follow a word's own slant.

#ifndef BENCHLEAF_CORE_SCAN_POINTS_H_
#define BENCHLEAF_CORE_SCAN_POINTS_H_

#include "benchleaf/core/geometry.h"

namespace benchleaf {

// In fractions of the page as scanned, as in FractionBox; not cut to the page.
struct FractionPoint {
  double x = 0;
  double y = 0;

  friend bool operator==(const FractionPoint&, const FractionPoint&) = default;
};

// Where a point of the level page (px) lies on the scan.
FractionPoint PointOnScan(const PageFrame& frame, double level_x, double level_y);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_SCAN_POINTS_H_
