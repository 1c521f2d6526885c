// Columns of a parts list that hold part numbers of whatever form: several makers' side by side, or with spaces within.

#ifndef BENCHLEAF_SRC_EXTRACT_CODE_COLUMNS_H_
#define BENCHLEAF_SRC_EXTRACT_CODE_COLUMNS_H_

#include "extract/list_rows.h"
#include "extract/part_column.h"
#include "extract/rule_tables.h"

#include <cstddef>
#include <vector>

namespace benchleaf::extract {

// A column is known by its cells alone: one below the other, nearly all of capitals and figures that are no value, tube
// or semiconductor, and no words among them.
class CodeColumns {
 public:
  CodeColumns(const std::vector<const RowLines*>& rows, double cap, const Rules::Tables& tables);

  // The row's cells in such columns, left to right.
  std::vector<PartCell> Find(const RowLines& row) const;

  // Whether the cell stands in a column that is nearly as full as the fullest one: the set's own maker has a number for
  // every part, others have not.
  bool InFullColumn(const PartCell& cell) const;

 private:
  struct Column {
    int left = 0;  // px
    std::size_t codes = 0;
    std::size_t others = 0;
  };

  // The number of the column at that place, or how many there are when none is.
  std::size_t At(int left) const;

  double cap_;
  const Rules::Tables& tables_;
  std::vector<Column> columns_;
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_CODE_COLUMNS_H_
