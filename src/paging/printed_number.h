// The number that is printed on a page.

#ifndef BENCHLEAF_SRC_PAGING_PRINTED_NUMBER_H_
#define BENCHLEAF_SRC_PAGING_PRINTED_NUMBER_H_

#include "paging/page_words.h"

#include <string>
#include <vector>

namespace benchleaf::paging {

// "8-17" or "42", from a cell at the head or foot of the page that holds nothing else; empty when there is none. `cap`
// is the capital height in px.
std::string PrintedNumber(const std::vector<WordLine>& lines, int page_height, double cap, const Rules::Tables& tables);

}  // namespace benchleaf::paging

#endif  // BENCHLEAF_SRC_PAGING_PRINTED_NUMBER_H_
