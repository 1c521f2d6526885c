// What the index holds: its sets, and one set in detail.

#ifndef BENCHLEAF_REPORT_SETS_H_
#define BENCHLEAF_REPORT_SETS_H_

#include "benchleaf/report/table.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <vector>

namespace benchleaf {

// A row for each set.
std::string SetsText(const std::vector<SetSummary>& sets, const Look& look);

// The set's manuals, the kinds of their pages, and what could not be read with its reason.
std::string SetDetailText(const SetSummary& set, const Look& look);

// One {"type":"set"} object, its manuals with kinds and failures within; ends in a newline.
std::string SetJson(const SetSummary& set);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_SETS_H_
