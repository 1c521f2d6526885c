// The chassis from above: where each tube sits.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_TUBE_LAYOUT_PAGE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_TUBE_LAYOUT_PAGE_H_

#include "scan-maker/circuit.h"
#include "scan-maker/made_page.h"
#include "scan-maker/page_furniture.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

// Tubes as circles with designator and type, transformers and cans between them.
MadePage MakeTubeLayoutPage(const std::string& title, const std::vector<Part>& parts, const PageFurniture& furniture,
                            std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_TUBE_LAYOUT_PAGE_H_
