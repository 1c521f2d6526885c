// Which set a person means.

#ifndef BENCHLEAF_STORE_SET_NAMES_H_
#define BENCHLEAF_STORE_SET_NAMES_H_

#include "benchleaf/store/index_reader.h"

#include <xapian.h>

#include <string>
#include <vector>

namespace benchleaf::store {

// All sets, by name. Throws Xapian::Error.
std::vector<SetSummary> AllSets(const Xapian::Database& database);

// As IndexReader::MatchSets says, out of the sets of the database. Throws Xapian::Error.
IndexReader::SetNames MatchSetNames(const Xapian::Database& database, const std::string& text);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_SET_NAMES_H_
