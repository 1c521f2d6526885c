// The upright pieces of a parts list, free of what only leads the eye: dotted leaders and ruled lines.

#ifndef BENCHLEAF_SRC_EXTRACT_LIST_PIECES_H_
#define BENCHLEAF_SRC_EXTRACT_LIST_PIECES_H_

#include "extract/pieces.h"

#include <vector>

namespace benchleaf::extract {

// A piece cut where leaders run through it ("R101.....470K" gives two, with their shares of the box); pieces that are
// nothing but leaders are gone. Signs of repetition (" '' ,,) stay.
std::vector<Piece> WithoutLeaders(const std::vector<Piece>& pieces);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LIST_PIECES_H_
