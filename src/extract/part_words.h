// Which class of part a description speaks of (config/part-words.tsv).

#ifndef BENCHLEAF_SRC_EXTRACT_PART_WORDS_H_
#define BENCHLEAF_SRC_EXTRACT_PART_WORDS_H_

#include "extract/rule_tables.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::extract {

// The letters that designators of such a part may begin with; empty for a word that tells none. The word may be in the
// plural, and misread by a little.
std::vector<std::string> ClassesOfWord(std::string_view word, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PART_WORDS_H_
