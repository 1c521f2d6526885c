// Which designator each row of a list has, told by all rows together.

#ifndef BENCHLEAF_SRC_EXTRACT_ROW_NAMING_H_
#define BENCHLEAF_SRC_EXTRACT_ROW_NAMING_H_

#include "extract/list_rows.h"
#include "extract/rule_tables.h"

#include <vector>

namespace benchleaf::extract {

// Puts the designators right that a scan spoiled. In a list classes run in blocks and numbers rise; the words of a row
// and the title over it tell its class; and every reading of its cell speaks for what looks like it. Of all
// designators that a row may have, the likeliest in its place is taken, and how sure it is, is how likely. Rows are
// named, never made; a row stays without a name when none is likely.
void NameRows(std::vector<ListRow>& rows, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_ROW_NAMING_H_
