// Which token of one reader stands where a token of the other does. Pure. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_TOKEN_PARTNER_H_
#define BENCHLEAF_SRC_READING_TOKEN_PARTNER_H_

#include "reading/token.h"

#include <vector>

namespace benchleaf {

// How much of the narrower token's width lies under the other, 0 to 1. A line's tokens differ only along it.
double CommonWidth(const Box& a, const Box& b);

// The token of the other reader that stands in a token's place. Null when there is none, and when there are several:
// then the readers have parted the line differently.
const Token* Partner(const Token& token, const std::vector<Token>& others);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_TOKEN_PARTNER_H_
