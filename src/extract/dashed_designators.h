// Designators printed with a dash between letters and number: R-12, C-4A. Sets of the thirties and forties have them
// throughout, or not at all (common practice, no source). On other pages R-12 is the number of a part.

#ifndef BENCHLEAF_SRC_EXTRACT_DASHED_DESIGNATORS_H_
#define BENCHLEAF_SRC_EXTRACT_DASHED_DESIGNATORS_H_

#include "extract/pieces.h"
#include "extract/rule_tables.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::extract {

// Where the dash, one of `dashes`, stands between capitals at the front of a text and up to three figures; 0 when there
// is none.
std::size_t DashBehindLetters(std::string_view text, std::string_view dashes = "-");

// The text with the dash of each of its designators left out: is R1,R2. What is a dash for another reason
// stays: R1-8, V1-6AU6.
std::string WithoutDesignatorDashes(std::string_view plain, const Rules::Tables& tables);

// The page's pieces, as PiecesOf (pieces.h) gives them; where the page prints its designators so, without these dashes,
// in their other readings, too. It does when more words are designators with a dash than without, at least four, and
// most of their numbers are as low, or as close to each other, as those that count parts are; makers' numbers are
// scattered. A class whose own numbers are scattered keeps its dashes. On such a page C.2 is C-2, too.
std::vector<Piece> UndashedPiecesOf(const PageReading& reading, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_DASHED_DESIGNATORS_H_
