// Old round values and the preferred values that took their place.

#ifndef BENCHLEAF_SRC_GAPS_VALUE_ROUNDING_H_
#define BENCHLEAF_SRC_GAPS_VALUE_ROUNDING_H_

namespace benchleaf::gaps {

// Whether one of two values is a preferred one (IEC 60063: E6, E12 or E24) and the other is not, and rounds to it: .05
// and .047, 250 and 270 or 220. Both are in the same unit.
bool IsRounding(double a, double b);

}  // namespace benchleaf::gaps

#endif  // BENCHLEAF_SRC_GAPS_VALUE_ROUNDING_H_
