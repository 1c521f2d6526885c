// How easily one short text is read for another on a bad scan.

#ifndef BENCHLEAF_SRC_EXTRACT_MISREADING_H_
#define BENCHLEAF_SRC_EXTRACT_MISREADING_H_

#include "extract/rule_tables.h"

#include <limits>
#include <string_view>

namespace benchleaf::extract {

// The cost of reading `read` where `meant` (capitals and figures) is printed: 0 for the same text, more for every
// character that was changed, lost or added, less where print makes the two alike. About the negative natural logarithm
// of how often that happens; texts far too long to be a designator are beyond all cost. A cost of `enough` or more need
// not be told exactly: only that it is so much at least.
double MisreadingCost(std::string_view read, std::string_view meant, const Rules::Tables& tables,
                      double enough = std::numeric_limits<double>::infinity());

// What any text that begins with `beginning` costs at least.
double LeastMisreadingCost(std::string_view beginning, std::string_view meant, const Rules::Tables& tables);

// The least that one more character costs which does not stand in what is meant.
inline constexpr double kCostOfASpeck = 0.7;

// Whether blurred or broken print makes the two capitals or figures alike, beyond those that have one outline (B and
// 8). Seen on generated lists at 200 dpi.
bool ArePrintedAlike(char a, char b);

// Whether some character of `read` may have been the letter or figure `meant`.
bool MayHold(std::string_view read, char meant, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_MISREADING_H_
