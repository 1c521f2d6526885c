// Values beside the designators of a drawing.

#ifndef BENCHLEAF_SRC_LINKING_NEAR_VALUES_H_
#define BENCHLEAF_SRC_LINKING_NEAR_VALUES_H_

#include "benchleaf/extract/sighting.h"

#include <cstddef>
#include <vector>

namespace benchleaf::linking {

// For each sighting the positions of the value sightings that stand beside it, nearest first; a value goes to the
// designator that it is nearest to. Empty for what is no designator.
std::vector<std::vector<std::size_t>> ValuesBeside(const std::vector<Sighting>& sightings);

}  // namespace benchleaf::linking

#endif  // BENCHLEAF_SRC_LINKING_NEAR_VALUES_H_
