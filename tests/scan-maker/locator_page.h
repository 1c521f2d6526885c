// The chassis from below: where the small parts are.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_LOCATOR_PAGE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_LOCATOR_PAGE_H_

#include "scan-maker/circuit.h"
#include "scan-maker/made_page.h"
#include "scan-maker/page_furniture.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

// Sockets, and the bodies of resistors, capacitors and coils with their designators, some of them turned.
MadePage MakeLocatorPage(const std::string& title, const std::vector<Part>& parts, const PageFurniture& furniture,
                         std::uint64_t seed);

// The same with `count` small parts that are called out by the item numbers 1, 2, 3, ... instead.
MadePage MakeItemLocatorPage(const std::string& title, int count, const PageFurniture& furniture, std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_LOCATOR_PAGE_H_
