// The column of item numbers of a list that names no designators.

#ifndef BENCHLEAF_SRC_EXTRACT_ITEM_COLUMN_H_
#define BENCHLEAF_SRC_EXTRACT_ITEM_COLUMN_H_

#include "extract/pieces.h"
#include "extract/rule_tables.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf::extract {

// A row's number in its column.
struct ItemCell {
  std::size_t line = 0;
  std::size_t piece = 0;
  Box box;           // px
  std::string item;  // empty where it could not be told
  double confidence = 0;
};

struct ItemColumn {
  int left = 0;                 // px
  std::vector<ItemCell> cells;  // top to bottom
};

// The columns whose numbers count the rows, from left to right: several where tables stand abreast. Numbers that a scan
// spoiled are put right where those above and below leave one possibility. `lines` are those of the page, `cap` is the
// capital height in px.
std::vector<ItemColumn> FindItemColumns(const std::vector<Line>& lines, double cap, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_ITEM_COLUMN_H_
