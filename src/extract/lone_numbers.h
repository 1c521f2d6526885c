// Designators whose numbers lie far beyond all others of their class.

#ifndef BENCHLEAF_SRC_EXTRACT_LONE_NUMBERS_H_
#define BENCHLEAF_SRC_EXTRACT_LONE_NUMBERS_H_

#include "benchleaf/extract/lexicon.h"

#include <set>
#include <string>
#include <vector>

namespace benchleaf::extract {

// Parts are numbered on from 1, or from a hundred or thousand of their unit: R101 to R186. A number that is the only
// one of its hundred, and beyond twice the number below it, is rather misread: R9186. Classes with few numbers tell
// nothing.
std::set<std::string> LoneNumbers(const std::vector<LexiconPage>& pages);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LONE_NUMBERS_H_
