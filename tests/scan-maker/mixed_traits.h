// Real scans have several faults at once.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_MIXED_TRAITS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_MIXED_TRAITS_H_

#include "scan-maker/page_trait.h"

#include <cstdint>
#include <vector>

namespace benchleaf::scanmaker {

// Some traits that a page can have together, none to six, three for the most: of traits that exclude each other (a
// designator is pale or white on black) at most one. Same seed: same traits.
std::vector<PageTrait> MixedTraits(std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_MIXED_TRAITS_H_
