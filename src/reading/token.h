// What a reader gives for a line. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_TOKEN_H_
#define BENCHLEAF_SRC_READING_TOKEN_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/reading/page_reading.h"

#include <string>
#include <vector>

namespace benchleaf {

// A word as a reader gives it.
struct Token {
  std::string text;                            // UTF-8
  Box box;                                     // px of the image that was read
  double confidence = 0;                       // 0 to 1
  std::vector<Alternative> alternatives = {};  // what the same reader saw next, where it took the line for one word
};

// What the reader of drawings' lettering reads scraps of symbols and wires as.
inline constexpr const char* kNoText = "~";

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_TOKEN_H_
