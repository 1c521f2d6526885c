// The designators that a spoiled row of a list may have.

#ifndef BENCHLEAF_SRC_EXTRACT_NAME_CANDIDATES_H_
#define BENCHLEAF_SRC_EXTRACT_NAME_CANDIDATES_H_

#include "extract/list_rows.h"
#include "extract/rule_tables.h"

#include <vector>

namespace benchleaf::extract {

struct NameCandidate {
  Designator designator;
  double fit = 0;     // natural logarithm of how well it fits the row's readings and words
  bool told = false;  // a reading spells it, and the row's words tell its class
  bool seen = false;  // some reading looks like it, or the row's words tell its class, or its cell is empty
};

// A sure row's designator and how many rows away it stands.
struct NearName {
  const Designator* designator = nullptr;
  int rows = 0;
};

// What the readings spell, or would spell with the letters of the rows near by, and the numbers next to those. Best
// first, a few dozen at most; each fits by the readings, and by the class of part that the row's words and title tell.
// `above` and `below` may be null.
std::vector<NameCandidate> NameCandidates(const ListRow& row, const NearName& above, const NearName& below,
                                          const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_NAME_CANDIDATES_H_
