// Words as extraction works with them, and the lines they stand in.

#ifndef BENCHLEAF_SRC_EXTRACT_PIECES_H_
#define BENCHLEAF_SRC_EXTRACT_PIECES_H_

#include "benchleaf/reading/page_reading.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf::extract {

// A word, or a part of one, with its text made plain.
struct Piece {
  std::string text;  // plain, see plain_text.h
  std::string read;  // as read
  Box box;           // px of the level page
  int turn = 0;
  double confidence = 0;
  WordOrigin origin = WordOrigin::kString;
  std::vector<Alternative> alternatives;  // plain
};

// Pieces side by side, from left to right.
struct Line {
  std::vector<Piece> pieces;
  Box box;
};

// The page's words with text, in their order.
std::vector<Piece> PiecesOf(const PageReading& reading);

// The lowest edge of all, px; 1 when there are none.
int BottomOf(const std::vector<Piece>& pieces);

// Capital height in px: as measured on the page, else the middle of the words' heights; at least 1.
double CapHeight(const PageReading& reading);

// Pieces gathered into lines by where they stand, top to bottom. A slight slope and curl of the page is followed, as
// each piece is compared with its neighbour, not with the line's beginning.
// REQUIRES: pieces of one turn.
std::vector<Line> JoinLines(std::vector<Piece> pieces);

// The lines of the page's upright words.
std::vector<Line> UprightLines(const PageReading& reading);

// Pieces put into one with a box round all and the least of their confidences.
Piece Joined(const std::vector<Piece>& pieces, std::size_t from, std::size_t count);

// The free space from one piece to the next in px; negative when they overlap.
int Gap(const Piece& left, const Piece& right);

// Whether less than `reach` px lie between the boxes, across and down.
bool Near(const Box& a, const Box& b, double reach);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PIECES_H_
