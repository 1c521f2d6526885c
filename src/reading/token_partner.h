// Which token of one reader stands where a token of the other does, and whether they say the same. Pure. Private to
// reading/.

#ifndef BENCHLEAF_SRC_READING_TOKEN_PARTNER_H_
#define BENCHLEAF_SRC_READING_TOKEN_PARTNER_H_

#include "reading/token.h"

#include <string_view>
#include <vector>

namespace benchleaf {

// How much of the narrower token's width lies under the other, 0 to 1. A line's tokens differ only along it.
double CommonWidth(const Box& a, const Box& b);

// Whether two readings are the same word: the points and commas that close them do not count, since they are hardly
// more than specks.
bool SameWord(std::string_view a, std::string_view b);

// The token of the other reader that stands in a token's place. Null when there is none, and when there are several:
// then the readers have parted the line differently.
const Token* Partner(const Token& token, const std::vector<Token>& others);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_TOKEN_PARTNER_H_
