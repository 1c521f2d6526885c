// A place on a page, in words that a person finds it by.

#ifndef BENCHLEAF_REPORT_WHERE_H_
#define BENCHLEAF_REPORT_WHERE_H_

#include "benchleaf/core/geometry.h"

#include <string>

namespace benchleaf {

// "upper left", "top", "upper right", "left", "centre", "right", "lower left", "bottom", "lower right": the ninth of
// the page, as scanned, in which the middle of the box lies.
std::string RegionOnPage(const FractionBox& box);

// "upper left, 23 % across, 14 % down": the region, and where the middle of the box lies.
std::string WhereOnPage(const FractionBox& box);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_WHERE_H_
