// What `sets` tells of a manual, counted once when it is written, so that no page is opened for it.

#ifndef BENCHLEAF_STORE_SUMMARY_H_
#define BENCHLEAF_STORE_SUMMARY_H_

#include "benchleaf/record/manual_record.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <string_view>

namespace benchleaf::store {

SetSummary::ManualSummary Summarize(const ManualRecord& manual);

std::string EncodeSummary(const SetSummary::ManualSummary& summary);
// Throws Xapian::DatabaseCorruptError.
SetSummary::ManualSummary DecodeSummary(std::string_view bytes);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_SUMMARY_H_
