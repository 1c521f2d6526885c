// A description cut into the pieces that values are made of.

#ifndef BENCHLEAF_SRC_ORDERS_RATING_WORDS_H_
#define BENCHLEAF_SRC_ORDERS_RATING_WORDS_H_

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::orders {

// Numbers with or without their unit, units and words, in capitals: "1MFD.200 V. paper" gives 1MFD, 200, V, PAPER. What
// scans do to figures and units is undone; each time a doubt says so.
std::vector<std::string> RatingWords(std::string_view description, std::vector<std::string>& doubts);

}  // namespace benchleaf::orders

#endif  // BENCHLEAF_SRC_ORDERS_RATING_WORDS_H_
