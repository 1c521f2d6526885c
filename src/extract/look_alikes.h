// Characters that scans confuse, put right where only one reading is possible.

#ifndef BENCHLEAF_SRC_EXTRACT_LOOK_ALIKES_H_
#define BENCHLEAF_SRC_EXTRACT_LOOK_ALIKES_H_

#include "extract/rule_tables.h"

#include <string>
#include <string_view>

namespace benchleaf::extract {

// What the tables say of a UTF-8 character; all zero for one they do not name.
LookAlike LookAlikeOf(const std::string& character, const Rules::Tables& tables);

// See FoldLookAlikes in benchleaf/extract/extract.h.
std::string Folded(std::string_view text, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LOOK_ALIKES_H_
