// The answer to "what does this manual lack".

#ifndef BENCHLEAF_REPORT_GAPS_H_
#define BENCHLEAF_REPORT_GAPS_H_

#include "benchleaf/gaps/find_gaps.h"
#include "benchleaf/report/table.h"

#include <string>

namespace benchleaf {

// What was searched, and what could not be compared, in lines that end in newlines.
std::string SearchedText(const ManualGaps& gaps);

// What was searched, then a table of the findings.
std::string GapsText(const ManualGaps& gaps, const Look& look);

// Columns: set, manual, kind, grade, what, why, file, page, printed_page, box, badly_read. A finding of several places
// has a row for each. The header is for the first manual only.
std::string GapsCsv(const ManualGaps& gaps, bool with_header);

// One {"type":"searched"} object, then one {"type":"gap"} a finding.
std::string GapsJson(const ManualGaps& gaps);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_GAPS_H_
