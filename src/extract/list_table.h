// Where the tables of a parts-list page stand, and how their columns are ordered.

#ifndef BENCHLEAF_SRC_EXTRACT_LIST_TABLE_H_
#define BENCHLEAF_SRC_EXTRACT_LIST_TABLE_H_

#include "extract/designator_range.h"
#include "extract/item_column.h"
#include "extract/pieces.h"
#include "extract/rule_tables.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace benchleaf::extract {

enum class ColumnOrder {
  kDesignatorFirst,
  kDesignatorInside,  // something stands in front of it: a part number, an item number
  kDesignatorLast,
  kItems,         // no designators; item numbers begin the rows
  kNoDesignator,  // a list of part numbers alone
};

struct ListTable {
  std::vector<Line> lines;  // of this table alone, top to bottom
  ColumnOrder order = ColumnOrder::kNoDesignator;
  int designator_left = 0;  // px, left edge of the column; 0 without one
  std::vector<ItemCell>
      items;  // those of the page's cells of item numbers that stand in it; `line` and `piece` tell nothing
};

// A heading over all tables that stand abreast, and what is below it up to the next such heading.
struct ListBand {
  std::optional<Line> heading;
  std::vector<ListTable> tables;  // left to right
};

// Designators at the place in a line where a column may begin.
struct DesignatorCell {
  std::vector<Designator> designators;
  std::size_t from = 0;   // first piece
  std::size_t count = 0;  // pieces: more than one for R1 THRU R8, and for letters spaced out
  Box box;                // px; reaches beyond the pieces where another reading of them is longer
};

// What is known of the column in which a designator cell is looked for.
struct CellColumn {
  const Designator* previous = nullptr;  // of the row above, when the cell may go on from it
  LoneStrokes lone_strokes = LoneStrokes::kRefuse;
  int right = 0;  // px: figures that end left of it belong to the cell even without commas; 0 when that is not known
};

// The designators that the pieces from `from` on spell; nothing when they spell none.
std::optional<DesignatorCell> DesignatorCellAt(const std::vector<Piece>& pieces, std::size_t from, double cap,
                                               const Rules::Tables& tables, const CellColumn& column = {});

// Whether a piece belongs to the words before it: SAME AS R4, SOCKET FOR V1. A typewriter's spaces are wide.
bool IsMention(const std::vector<Piece>& pieces, std::size_t at, double cap, const Rules::Tables& tables);

// Whether a piece begins a column: free space, or nothing, is to its left.
bool BeginsColumn(const std::vector<Piece>& pieces, std::size_t at, double cap);

// The page's tables, in bands from the top. Pieces are upright ones without leaders; `cap` is the capital height in px.
std::vector<ListBand> FindTables(std::vector<Piece> pieces, double cap, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LIST_TABLE_H_
