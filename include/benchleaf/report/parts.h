// The answer to "what are this set's parts": its parts lists, with the places where each part is drawn.

#ifndef BENCHLEAF_REPORT_PARTS_H_
#define BENCHLEAF_REPORT_PARTS_H_

#include "benchleaf/report/table.h"
#include "benchleaf/store/index_reader.h"

#include <string>
#include <vector>

namespace benchleaf {

// A table for each manual, since two manuals of one set may number their parts differently.
std::string PartsText(const std::string& set, const std::vector<FoundEntry>& entries, const Look& look);

// RFC 4180 with a header; see csv.h for what is done to fields that look like formulas. Columns: set, manual,
// designator, assembly, description, value, part_number, quantity, file, page, confidence, drawn_on. The last holds
// "FILE p. PAGE, WHERE, WHY" for each place, parted by "; ".
std::string PartsCsv(const std::vector<FoundEntry>& entries);

// One {"type":"part"} object a line, its places in "drawn".
std::string PartsJson(const std::vector<FoundEntry>& entries);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_PARTS_H_
