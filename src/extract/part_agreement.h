// Part numbers of one table against each other.

#ifndef BENCHLEAF_SRC_EXTRACT_PART_AGREEMENT_H_
#define BENCHLEAF_SRC_EXTRACT_PART_AGREEMENT_H_

#include "extract/list_rows.h"
#include "extract/row_fields.h"

#include <vector>

namespace benchleaf::extract {

// Puts figures right that readers confuse: rows that describe the same part have the same number, and where nearly all
// numbers of a class begin with one group of figures, so does the one that only looks like it. A number that differs by
// anything else stays. REQUIRES: as many fields as rows.
void AgreeOnParts(const std::vector<ListRow>& rows, std::vector<RowFields>& fields);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PART_AGREEMENT_H_
