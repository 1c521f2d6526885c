// Characters that scans confuse, put right where only one reading is possible.

#ifndef BENCHLEAF_SRC_EXTRACT_LOOK_ALIKES_H_
#define BENCHLEAF_SRC_EXTRACT_LOOK_ALIKES_H_

#include "extract/rule_tables.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::extract {

// What the tables say of a UTF-8 character; all zero for one they do not name.
inline LookAlike LookAlikeOf(std::string_view character, const Rules::Tables& tables) {
  return tables.look_alikes.Of(character);
}

// See FoldLookAlikes in benchleaf/extract/extract.h.
std::string Folded(std::string_view text, const Rules::Tables& tables);

// How unlike the text that was meant (capitals and figures) the characters as read are: the sum over them of 0 for the
// same character, a tenth for its small letter, a half for a look-alike of everyday (I for 1, O for 0), 1 for another
// of the same class (S for 5). Nothing when some character is of another class, or the lengths differ.
std::optional<double> Unlikeness(const std::vector<std::string_view>& read, std::string_view meant,
                                 const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LOOK_ALIKES_H_
