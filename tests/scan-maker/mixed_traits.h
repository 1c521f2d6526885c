// Real scans have several faults at once.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_MIXED_TRAITS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_MIXED_TRAITS_H_

#include "scan-maker/page_trait.h"

#include <cstdint>
#include <vector>

namespace benchleaf::scanmaker {

// What a page is, by what can befall it: no list has leaders, no drawing a photograph.
enum class PageForm { kDrawing, kLocator, kList };

// Some traits that a page of that form can have together, none to six: of traits that exclude each other (a designator
// is pale or white on black) at most one. Same seed: same traits.
std::vector<PageTrait> MixedTraits(PageForm form, std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_MIXED_TRAITS_H_
