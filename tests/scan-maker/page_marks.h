// Marks between a page's letters that are none.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_PAGE_MARKS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_PAGE_MARKS_H_

#include "scan-maker/made_page.h"

#include <cstdint>

namespace benchleaf::scanmaker {

// Pencil: every third designator ticked off or underlined, grey and shaky.
MadePage WithPencil(const MadePage& page, std::uint64_t seed);

// Dotted outlines, as drawings have them round shields and assemblies, through whatever stands there.
MadePage WithDottedOutlines(const MadePage& page, std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_PAGE_MARKS_H_
