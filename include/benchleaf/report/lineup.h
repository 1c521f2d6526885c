// The answer to "which tubes has this set", and of two sets side by side.

#ifndef BENCHLEAF_REPORT_LINEUP_H_
#define BENCHLEAF_REPORT_LINEUP_H_

#include "benchleaf/lineup/compare.h"
#include "benchleaf/lineup/line_up.h"
#include "benchleaf/report/table.h"

#include <string>

namespace benchleaf {

// A table of the tubes, a table of those without a designator, what the heaters draw, and where the figures come from.
std::string LineupText(const ManualLineup& lineup, const Look& look);

// "6.3 V, 0.3 A", with the row's type where it is not the very tube's; says so where the figures are not known.
std::string LineupHeater(const LineupTube& tube);

// What the heaters draw, what is in no sum, and where the figures come from; each line ends in a newline.
std::string HeaterLines(const ManualLineup& lineup);

// Columns: set, manual, designator, type, functions, class, heater_volts, heater_amps, file, page, confidence,
// other_types. Without the header when `with_header` is false, for the next manual of the set.
enum class WithHeader { kNo, kYes };
std::string LineupCsv(const ManualLineup& lineup, WithHeader with_header);

// One {"type":"lineup-tube"} object a tube, then one {"type":"heaters"}.
std::string LineupJson(const ManualLineup& lineup);

// Which types both sets have, which differ in the heater only, which only one has; and what does the same work.
std::string ComparisonText(const ManualLineup& first, const ManualLineup& second, const LineupComparison& comparison,
                           const Look& look);
// Columns: relation, first_set, first_manual, first_type, first_tubes, second_set, ...
std::string ComparisonCsv(const ManualLineup& first, const ManualLineup& second, const LineupComparison& comparison,
                          WithHeader with_header);
// One {"type":"compared-type"} object a row, then one {"type":"compared-function"} a function.
std::string ComparisonJson(const ManualLineup& first, const ManualLineup& second, const LineupComparison& comparison);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_LINEUP_H_
