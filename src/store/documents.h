// From a manual's record to the documents of the index, as schema.h lays them out.

#ifndef BENCHLEAF_STORE_DOCUMENTS_H_
#define BENCHLEAF_STORE_DOCUMENTS_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/record/manual_record.h"

#include <xapian.h>

#include <array>
#include <vector>

namespace benchleaf::store {

// Of one page of the manual: its words, and all else.
std::array<Xapian::Document, 2> PageDocuments(const ManualRecord& manual, const PageRecord& page, const Rules& rules);

// Puts the manual's documents in the place of those that the database has of it, if any. Where it has as many pages as
// before, documents that do not change are left as they are: after a change of the rules that is most of them.
// `of_first_pages` are those of its first pages, where they are made already. Throws Xapian::Error.
// REQUIRES: a transaction is under way.
void PutManual(Xapian::WritableDatabase& database, const ManualRecord& manual, const Rules& rules,
               std::vector<Xapian::Document> of_first_pages = {});

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_DOCUMENTS_H_
