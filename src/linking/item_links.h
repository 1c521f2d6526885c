// Ties the rows of lists by items to the numbers that drawings call out.

#ifndef BENCHLEAF_SRC_LINKING_ITEM_LINKS_H_
#define BENCHLEAF_SRC_LINKING_ITEM_LINKS_H_

#include "benchleaf/linking/link.h"

#include <vector>

namespace benchleaf::linking {

// In no order.
std::vector<Link> ItemLinks(const std::vector<LinkPage>& pages);

}  // namespace benchleaf::linking

#endif  // BENCHLEAF_SRC_LINKING_ITEM_LINKS_H_
