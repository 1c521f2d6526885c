// From a manual's record to the documents of the index, as schema.h lays them out.

#ifndef BENCHLEAF_STORE_DOCUMENTS_H_
#define BENCHLEAF_STORE_DOCUMENTS_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/record/manual_record.h"

#include <xapian.h>

#include <vector>

namespace benchleaf::store {

// Adds the manual's documents to the database. Throws Xapian::Error.
// REQUIRES: a transaction is under way; the database holds no document of this manual.
void AddManual(Xapian::WritableDatabase& database, const ManualRecord& manual, const Rules& rules);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_DOCUMENTS_H_
