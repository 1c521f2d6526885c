// The rows of a parts list, before their cells are told apart.

#ifndef BENCHLEAF_SRC_EXTRACT_LIST_ROWS_H_
#define BENCHLEAF_SRC_EXTRACT_LIST_ROWS_H_

#include "extract/list_table.h"
#include "extract/pieces.h"
#include "extract/rule_tables.h"

#include <string>
#include <vector>

namespace benchleaf::extract {

// Pieces, a vector for each printed line.
using RowLines = std::vector<std::vector<Piece>>;

struct ListRow {
  std::vector<Designator> designators;  // every one that the row names; empty for a row that names none
  std::string designator_text;          // as read
  std::vector<Alternative> readings;    // plain, of the first designator: what the readers saw there, surest first
  std::string more_designators;         // ",16,17": read behind a first designator that was not made out
  Box designator_box;                   // empty when there is none
  double designator_confidence = 1;     // of the reading, 0 to 1
  RowLines lines;                       // the other pieces
  std::string item;                     // its number in a list by items; empty when it was not told
  Box item_box;                         // empty when its number is told by the rows around it
  double item_confidence = 0;           // 0 to 1
  Box box;                              // of the whole row
  std::string assembly;                 // in force
  std::string title;                    // of the group of rows, in capitals; empty without one
};

// The rows of one table, top to bottom. `assembly` is the heading in force and is brought up to date.
struct TableRows {
  std::vector<ListRow> rows;
  ColumnOrder order = ColumnOrder::kNoDesignator;
  int quantity_left = -1;  // px, where the titles of columns put the quantity; -1 when they do not
};

// Gives rows of a list by items that have no number the one that those above and below leave.
void CountItems(std::vector<ListRow>& rows);

TableRows RowsOf(const ListTable& table, double cap, const Rules::Tables& tables, std::string& assembly);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LIST_ROWS_H_
