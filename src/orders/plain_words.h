// The words of a description, for comparing with tables.

#ifndef BENCHLEAF_SRC_ORDERS_PLAIN_WORDS_H_
#define BENCHLEAF_SRC_ORDERS_PLAIN_WORDS_H_

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::orders {

// Runs of letters and figures, in capitals.
std::vector<std::string> PlainWords(std::string_view text);

// Letters to insert, leave out or change that make one text the other, but `most` + 1 when it takes more than `most`.
int EditsBetween(std::string_view a, std::string_view b, int most);

}  // namespace benchleaf::orders

#endif  // BENCHLEAF_SRC_ORDERS_PLAIN_WORDS_H_
