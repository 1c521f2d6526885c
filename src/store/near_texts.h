// The misread terms of an index that are near a term.

#ifndef BENCHLEAF_STORE_NEAR_TEXTS_H_
#define BENCHLEAF_STORE_NEAR_TEXTS_H_

#include "benchleaf/extract/rules.h"

#include <xapian.h>

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf::store {

// The texts under which the index has misread words (prefix W in schema.h), that begin with the first two characters of
// `folded` and are like it by LikenessOf: the likest first, at most `most`. Texts that cannot be near are skipped, so
// it takes as long in an index of a million pages as in one of a thousand, about. REQUIRES: look-alikes are folded;
// folded.size() > 2
std::vector<std::string> NearTexts(const Xapian::Database& database, const Rules& rules, const std::string& folded,
                                   std::size_t most);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_NEAR_TEXTS_H_
