// Parts lists as manuals of the tube era print them.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_PARTS_LIST_PAGE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_PARTS_LIST_PAGE_H_

#include "scan-maker/circuit.h"
#include "scan-maker/list_layout.h"
#include "scan-maker/made_page.h"
#include "scan-maker/page_furniture.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

// The parts of one assembly, or of the whole set where `assembly` is empty.
struct ListSection {
  std::string assembly;  // "A4" or "UNIT 4"
  std::string title;     // of the assembly: "SWEEP GENERATOR"
  std::vector<Part> parts;
};

// As many pages as the list needs; their numbers go on from the furniture's.
std::vector<MadePage> MakePartsListPages(const std::vector<ListSection>& sections, const ListLayout& layout,
                                         const PageFurniture& furniture);

// One full page of parts that no manual has, for benches that want fresh lists. Even seeds head the parts with
// assemblies.
MadePage MakeRandomPartsListPage(const ListLayout& layout, Lettering lettering, std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_PARTS_LIST_PAGE_H_
