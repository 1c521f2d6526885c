// The words of a description, for comparing with tables.

#ifndef BENCHLEAF_SRC_ORDERS_PLAIN_WORDS_H_
#define BENCHLEAF_SRC_ORDERS_PLAIN_WORDS_H_

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::orders {

// Runs of letters and figures, in capitals.
std::vector<std::string> PlainWords(std::string_view text);

}  // namespace benchleaf::orders

#endif  // BENCHLEAF_SRC_ORDERS_PLAIN_WORDS_H_
