// Item numbers of parts lists that name no designators, called out on the drawings of their manual.

#ifndef BENCHLEAF_EXTRACT_ITEM_CALLOUTS_H_
#define BENCHLEAF_EXTRACT_ITEM_CALLOUTS_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/extract/sighting.h"
#include "benchleaf/reading/page_reading.h"

#include <cstddef>
#include <set>
#include <string>
#include <vector>

namespace benchleaf {

// The rows of one list by items, over one or several pages: a manual may number the items of each of its figures anew.
struct ItemList {
  struct Row {
    std::size_t page = 0;  // positions in what was given
    std::size_t entry = 0;
  };
  std::vector<Row> rows;
  std::set<std::string> items;
};

// The lists by items among the entries of a manual's pages, in their order. A list ends where the assembly changes or
// the numbers begin anew. Entries with a designator are in none.
std::vector<ItemList> ItemListsOf(const std::vector<const std::vector<Entry>*>& pages);

// The share of the list's items that are among these, 0 to 1.
double ShareCalledOut(const ItemList& list, const std::set<std::string>& called_out);

// Sightings (kItem) of the items that a drawing calls out: numbers that stand alone. A drawing is believed to call out
// items only where it shows much of one list, where few other numbers stand alone, and where few designators are
// `seen`: the numbers of pins and resistances without a unit are none. `printed_number` is the page's own, which is no
// item. Only numbers that were read and that a list has are given.
std::vector<Sighting> ItemCallouts(const PageReading& reading, const std::string& printed_number,
                                   const std::vector<Sighting>& seen, const std::vector<ItemList>& lists,
                                   const Rules& rules);

}  // namespace benchleaf

#endif  // BENCHLEAF_EXTRACT_ITEM_CALLOUTS_H_
