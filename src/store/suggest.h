// Terms of the index that a person may have meant.

#ifndef BENCHLEAF_STORE_SUGGEST_H_
#define BENCHLEAF_STORE_SUGGEST_H_

#include "benchleaf/extract/rules.h"

#include <xapian.h>

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf::store {

// Canonical terms, then words of text, that begin alike and differ from `term` in at most two characters (one, when it
// has four or fewer), nearest first; characters that look alike do not count as different. Of equally near ones, those
// on more pages come first. Throws Xapian::Error.
//
// Xapian's own spelling correction gives one word only, and its table would have to be kept in step by hand whenever a
// manual is replaced; the terms themselves are always right.
std::vector<std::string> NearTerms(const Xapian::Database& database, const Rules& rules, const std::string& term,
                                   std::size_t most);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_SUGGEST_H_
