// What a text stands for.

#ifndef BENCHLEAF_SRC_EXTRACT_TERM_H_
#define BENCHLEAF_SRC_EXTRACT_TERM_H_

#include "benchleaf/extract/sighting.h"

#include <string>

namespace benchleaf::extract {

struct Term {
  TermKind kind = TermKind::kDesignator;
  std::string text;  // canonical
  double sure = 0;   // 0 to 1, by form alone
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_TERM_H_
