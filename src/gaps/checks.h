// The searches for gaps, each over one whole manual.

#ifndef BENCHLEAF_SRC_GAPS_CHECKS_H_
#define BENCHLEAF_SRC_GAPS_CHECKS_H_

#include "gaps/part_index.h"
#include "gaps/searched_pages.h"

#include <vector>

namespace benchleaf::gaps {

// Values beside symbols against those of the list.
std::vector<Gap> ValueGaps(const SearchedPages& pages, const Rules& rules);

// Listed, and on no schematic. Classes that no schematic shows (hardware, sockets) are told in one note each.
// REQUIRES: the manual has a schematic.
std::vector<Gap> NotDrawn(const SearchedPages& pages, const PartIndex& parts);

// On a schematic, and in no list. Classes that the list leaves out are told in one note each.
// REQUIRES: the manual has a parts list.
std::vector<Gap> NotListed(const SearchedPages& pages, const PartIndex& parts);

// Numbers between others that no part bears.
std::vector<Gap> NumberingHoles(const SearchedPages& pages, const PartIndex& parts);

// Rows of lists by items that no drawing calls out, though it calls out others of their list, and numbers that no row
// bears.
std::vector<Gap> ItemGaps(const SearchedPages& pages);

// Rows that have an item number and no designator.
std::size_t CountItems(const ManualRecord& manual);

// Printed page numbers that no page bears, and sections of which there is no page.
std::vector<Gap> PageGaps(const SearchedPages& pages);

// Figures, sections, pages and volumes that contents or text name, and volumes that are skipped.
std::vector<Gap> NamedAndNotFound(const SearchedPages& pages);

}  // namespace benchleaf::gaps

#endif  // BENCHLEAF_SRC_GAPS_CHECKS_H_
