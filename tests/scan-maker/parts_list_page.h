// Parts lists as manuals of the tube era print them.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_PARTS_LIST_PAGE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_PARTS_LIST_PAGE_H_

#include "scan-maker/circuit.h"
#include "scan-maker/made_page.h"
#include "scan-maker/page_furniture.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

enum class ListForm {
  kColumns,         // designator, description, part number
  kLeaders,         // the same with dotted leaders between
  kRuled,           // the same in a ruled table
  kDesignatorLast,  // part number, description, designator
};

enum class Grouping {
  kNone,     // a row for each part
  kDashes,   // like parts in one row: R1-R4; C12,14,17
  kThrough,  // R1 thru R4; C12,14,17
};

struct ListLayout {
  ListForm form = ListForm::kColumns;
  int abreast = 1;  // tables beside each other on a page, 1 or 2
  Grouping grouping = Grouping::kNone;
  bool quantity = false;         // a column of quantities
  bool class_headings = true;    // "CAPACITORS" over the capacitors
  double description_share = 1;  // of the usual width of descriptions; less makes more continuation lines
};

// The parts of one assembly, or of the whole set where `assembly` is empty.
struct ListSection {
  std::string assembly;  // "A4"
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
