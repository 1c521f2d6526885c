// Finds pages by the words of their text.

#ifndef BENCHLEAF_STORE_TEXT_SEARCH_H_
#define BENCHLEAF_STORE_TEXT_SEARCH_H_

#include "benchleaf/store/index_reader.h"

#include <xapian.h>

#include <cstddef>
#include <set>
#include <vector>

namespace benchleaf::store {

// The query, only on pages of the set and kind that are asked for. A set's term may stand for two long names: compare
// the names in the document.
Xapian::Query Filtered(const Xapian::Query& pages, const FindQuery& query);

// At most `most` pages that hold every word of the query, without those in `leave_out`: the page with the most mentions
// first. `*` at the end of a word stands for any ending. The sighting is the word that the page is found by: the first
// one behind which the most of the other words stand.
std::vector<FoundSighting> FindText(const Xapian::Database& database, const FindQuery& query,
                                    const std::set<Xapian::docid>& leave_out, std::size_t most);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_TEXT_SEARCH_H_
