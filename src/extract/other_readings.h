// Which other readings of a word count.

#ifndef BENCHLEAF_SRC_EXTRACT_OTHER_READINGS_H_
#define BENCHLEAF_SRC_EXTRACT_OTHER_READINGS_H_

#include "benchleaf/reading/page_reading.h"

#include <vector>

namespace benchleaf::extract {

// The word's alternatives in their order, without those that cannot be right where the word itself is: a number that
// was surely read is no shorter or longer designator (270 is not C4, whatever the other way up).
// They are the word's own: no copies.
std::vector<const Alternative*> OtherReadings(const Word& word);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_OTHER_READINGS_H_
