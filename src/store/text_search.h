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

// A word of a page as an answer: the text in capitals, no kind that means anything.
Sighting SightingOfWord(const Word& word, const PageFrame& frame);

// At most `most` pages that fit the query's text in Xapian's syntax (every word where no operator joins them; `-` or
// NOT before a word that must be missing; `*` at a word's end), without those in `leave_out`: the page with the most
// mentions first. The index has no positions, so that words in quotes are looked for anywhere on a page. The sighting
// is the word that the page is found by: the first one behind which the most of the other words stand.
std::vector<FoundSighting> FindText(const Xapian::Database& database, const FindQuery& query,
                                    const std::set<Xapian::docid>& leave_out, std::size_t most);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_TEXT_SEARCH_H_
