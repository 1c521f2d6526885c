// The parts index of a set.

#ifndef BENCHLEAF_STORE_PARTS_H_
#define BENCHLEAF_STORE_PARTS_H_

#include "store/stored.h"

#include "benchleaf/store/index_reader.h"

#include <xapian.h>

#include <vector>

namespace benchleaf::store {

// The manuals' entries with the places where their parts are drawn, in the order of manuals and pages.
// Throws Xapian::Error.
std::vector<FoundEntry> PartsOf(const Xapian::Database& database, const std::vector<StoredManual>& manuals);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_PARTS_H_
