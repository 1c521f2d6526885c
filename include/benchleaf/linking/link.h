// Ties a row of a parts list to the places where its part is drawn, within one manual.

#ifndef BENCHLEAF_LINKING_LINK_H_
#define BENCHLEAF_LINKING_LINK_H_

#include "benchleaf/extract/sighting.h"
#include "benchleaf/paging/page_facts.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf {

// What linking needs of one page of a manual. The pages of a manual's volumes come together, in reading order.
struct LinkPage {
  PageKind kind = PageKind::kOther;
  std::vector<Sighting> sightings;
  std::vector<Entry> entries;
};

// Positions count from 0 in the vectors that were given.
struct Link {
  std::size_t entry_page = 0;
  std::size_t entry = 0;
  std::size_t seen_page = 0;
  std::size_t sighting = 0;
  double confidence = 0;  // 0 to 1
  std::string reason;     // "same assembly", "only candidate", "value agrees": why it is believed

  friend bool operator==(const Link&, const Link&) = default;
};

// Every entry with a designator, tied to each sighting of that designator on a schematic or locator page, and every
// entry with an item number alone, tied to each drawing's callouts of that number. A designator drawn on three sheets
// gives three links. Ordered by entry, then by sighting.
std::vector<Link> LinkManual(const std::vector<LinkPage>& pages);

}  // namespace benchleaf

#endif  // BENCHLEAF_LINKING_LINK_H_
