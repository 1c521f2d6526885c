// Designators that a reader ran together for want of a comma.

#ifndef BENCHLEAF_SRC_EXTRACT_RUN_TOGETHER_H_
#define BENCHLEAF_SRC_EXTRACT_RUN_TOGETHER_H_

#include "extract/list_rows.h"

#include <vector>

namespace benchleaf::extract {

// Cuts numbers in two that are out of step with the rows above and below, where both parts are in step and no other cut
// does as well: C56 between C4 and C8 is C5,6. Scans lose the commas of grouped cells more often than figures.
void CutRunTogether(std::vector<ListRow>& rows);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_RUN_TOGETHER_H_
