// The cells of parts-list rows: part number, quantity, description, value.

#ifndef BENCHLEAF_SRC_EXTRACT_ROW_FIELDS_H_
#define BENCHLEAF_SRC_EXTRACT_ROW_FIELDS_H_

#include "extract/list_rows.h"
#include "extract/part_column.h"
#include "extract/rule_tables.h"

#include <optional>
#include <string>
#include <vector>

namespace benchleaf::extract {

struct RowFields {
  std::string description;
  std::string part_number;
  Box part_box;                       // empty when there is no part number
  double part_confidence = 0;         // of reading and form, 0 to 1
  std::vector<PartCell> other_parts;  // other makers' numbers
  std::string quantity;
  std::string value;  // canonical
};

// A row's part numbers, for which its designators need not be known.
struct RowParts {
  std::optional<RowLines>
      repeated;                  // the row's lines, signs of repetition replaced by what stands above; where it has any
  std::optional<PartCell> part;  // the row's own
  std::vector<PartCell> others;  // other makers' numbers

  const RowLines& LinesOf(const ListRow& row) const { return repeated ? *repeated : row.lines; }
};

// The part numbers of every row of one table, in the rows' order. Columns are found over all rows: most rows have their
// part number at one place, so one that a scan spoiled is still known for what it is.
std::vector<RowParts> PartsOf(const TableRows& table, double cap, const Rules::Tables& tables);

// The fields of every row of one table, in the rows' order. `parts` are what PartsOf gives of the same lines.
std::vector<RowFields> FieldsOf(const TableRows& table, const std::vector<RowParts>& parts, double cap);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_ROW_FIELDS_H_
