// Words by which parts lists are understood (config/list-words.tsv), looked up in text.

#ifndef BENCHLEAF_SRC_EXTRACT_LIST_WORDS_H_
#define BENCHLEAF_SRC_EXTRACT_LIST_WORDS_H_

#include "extract/rule_tables.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::extract {

// A word in capitals without the punctuation round it, as the table has its words ("Assy." is ASSY).
std::string ListWord(std::string_view plain);

// Whether the words from `at` on begin with a phrase of the role; gives the number of words it has, else 0.
// REQUIRES: words as ListWord gives them.
std::size_t PhraseAt(const std::vector<std::string>& words, std::size_t at, ListRole role, const Rules::Tables& tables);

// All roles that a single word has.
Roles RolesOf(std::string_view word, const Rules::Tables& tables);

// Whether a single word has the role.
bool HasRole(std::string_view word, ListRole role, const Rules::Tables& tables);

// Whether a single word is one of the role, or but for so few letters that a scan may have spoiled them: one of four,
// two of seven and more.
bool MayHaveRole(const std::string& word, ListRole role, const Rules::Tables& tables);

// Words for "to" and "and" inside designators turned into '-' and ',': R1THRUR8 is R1-R8.
std::string WithSignsForWords(std::string_view plain, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LIST_WORDS_H_
