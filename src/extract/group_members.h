// The further designators of rows that name several: C4,5,8,15.

#ifndef BENCHLEAF_SRC_EXTRACT_GROUP_MEMBERS_H_
#define BENCHLEAF_SRC_EXTRACT_GROUP_MEMBERS_H_

#include "extract/list_rows.h"

#include <vector>

namespace benchleaf::extract {

// Takes out what contradicts the other rows: numbers of a group rise, and no part is listed twice. A range of which a
// part has a row of its own is no range but a comma that a scan spoiled: its ends stay. How sure the others are is told
// by how well their group is in order.
void SettleGroups(std::vector<ListRow>& rows);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_GROUP_MEMBERS_H_
