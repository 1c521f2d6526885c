#include "gaps/value_rounding.h"

#include "extract/value.h"

#include "benchleaf/orders/preferred_values.h"

#include <algorithm>
#include <array>

namespace benchleaf::gaps {
namespace {

using extract::SameMagnitude;

bool RoundsTo(double value, double preferred) {
  // Sets of the time after the change are built with E12: 2 is a round value beside it, though E24 has it too.
  if (SameMagnitude(NearestPreferred(value, Series::kE12), value)) return false;
  constexpr std::array<Series, 3> kSeries = {Series::kE6, Series::kE12, Series::kE24};
  return std::any_of(kSeries.begin(), kSeries.end(), [&](Series series) {
    const double nearest = NearestPreferred(value, series);
    return SameMagnitude(nearest, preferred) && !SameMagnitude(nearest, value);
  });
}

}  // namespace

bool IsRounding(double a, double b) { return a > 0 && b > 0 && (RoundsTo(a, b) || RoundsTo(b, a)); }

}  // namespace benchleaf::gaps
