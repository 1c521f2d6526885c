// How the designators of one drawing speak for and against each other.

#ifndef BENCHLEAF_SRC_EXTRACT_PAGE_NUMBERING_H_
#define BENCHLEAF_SRC_EXTRACT_PAGE_NUMBERING_H_

#include "extract/page_terms.h"
#include "extract/rule_tables.h"

#include <vector>

namespace benchleaf::extract {

// Brings the confidence of a drawing's designators up to date: parts are numbered in turn, so the numbers next to one
// speak for it; and a part is drawn once, so the same designator elsewhere on the page speaks against both, mostly
// against the one that is less surely read. Sections of one part (V1A, V1B) are different designators. Terms of other
// kinds stay as they are.
void WeighByNumbering(std::vector<PageTerm>& terms, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PAGE_NUMBERING_H_
