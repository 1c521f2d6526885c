// The upright pieces of a parts list, free of what only leads the eye: dotted leaders and ruled lines.

#ifndef BENCHLEAF_SRC_EXTRACT_LIST_PIECES_H_
#define BENCHLEAF_SRC_EXTRACT_LIST_PIECES_H_

#include "extract/pieces.h"
#include "extract/rule_tables.h"

#include <vector>

namespace benchleaf::extract {

// A piece cut where leaders run through it ("R101.....470K" gives two, with their shares of the box); pieces that are
// nothing but leaders are gone, and so are the low words that a reader makes of them ("eee"). Underlines are gaps
// between words. Signs of repetition (" '' ,,) stay. `cap` is the capital height in px.
std::vector<Piece> WithoutLeaders(std::vector<Piece> pieces, double cap);

// Pieces of a line put together where an alternative reading of the first spells them all with signs between: "208",
// "6299", "04" with the alternative "208-6299-04".
void JoinByAlternatives(Line& line, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LIST_PIECES_H_
