// Finds words that may be a term, though the page was not read so.

#ifndef BENCHLEAF_STORE_MISREAD_SEARCH_H_
#define BENCHLEAF_STORE_MISREAD_SEARCH_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/store/index_reader.h"

#include <xapian.h>

#include <cstddef>
#include <set>
#include <string>
#include <vector>

namespace benchleaf::store {

// Words of which a reading, perhaps not the surest, is the term with look-alikes folded; for terms of six characters
// and more also those with a character or two misread, the first two right. The likeliest first, at most `most`; none
// at a place where one of `found` stands, or a term that was read more surely than this one. Match::kLookAlike, `text`
// the word as read in capitals, the confidence how likely it is the term. Adds the ids of their pages to `pages`.
// `term` is canonical. Throws Xapian::Error.
std::vector<FoundSighting> FindMisread(const Xapian::Database& database, const Rules& rules, const std::string& term,
                                       const FindQuery& query, const std::vector<FoundSighting>& found,
                                       std::size_t most, std::set<Xapian::docid>& pages);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_MISREAD_SEARCH_H_
