// Every part that a manual lists, draws or declares unused.

#ifndef BENCHLEAF_SRC_GAPS_PART_INDEX_H_
#define BENCHLEAF_SRC_GAPS_PART_INDEX_H_

#include "gaps/part_names.h"
#include "gaps/searched_pages.h"

#include <cstddef>
#include <map>
#include <vector>

namespace benchleaf::gaps {

// An entry of a list, or a sighting on a page: positions count from 0.
struct PartPlace {
  std::size_t page = 0;
  std::size_t item = 0;
  double confidence = 0;
};

struct PartIndex {
  std::map<PartName, std::vector<PartPlace>> listed;   // entries
  std::map<PartName, std::vector<PartPlace>> drawn;    // sightings on schematics
  std::map<PartName, std::vector<PartPlace>> located;  // sightings on locators and tube layouts
  std::vector<PartName> unused;                        // that the manual says stand for no part
};

// By page: whether its entries are rows of a list. A page whose entries give no part number, in a manual whose other
// lists give one to nearly every row, is a drawing that was taken for a list.
std::vector<bool> PagesOfLists(const ManualRecord& manual);

PartIndex IndexParts(const ManualRecord& manual, const Rules& rules);

// The places of the part, also where the assembly is known on one side only.
std::vector<PartPlace> PlacesOf(const std::map<PartName, std::vector<PartPlace>>& parts, const PartName& name);

bool IsUnused(const PartIndex& index, const PartName& name);

}  // namespace benchleaf::gaps

#endif  // BENCHLEAF_SRC_GAPS_PART_INDEX_H_
