// Comma-separated values as RFC 4180 describes them.

#ifndef BENCHLEAF_CORE_CSV_TABLE_H_
#define BENCHLEAF_CORE_CSV_TABLE_H_

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// One record. Cells are as written, without their quotes.
struct CsvRow {
  int line = 0;  // of the record's first character, counted from 1
  std::vector<std::string> cells;

  friend bool operator==(const CsvRow&, const CsvRow&) = default;
};

// A record that is no CSV; it is left out of the rows.
struct CsvFault {
  int line = 0;
  int column = 0;  // of the cell, counted from 1
  std::string message;

  friend bool operator==(const CsvFault&, const CsvFault&) = default;
};

struct CsvTable {
  std::vector<CsvRow> rows;
  std::vector<CsvFault> faults;
};

// Beyond RFC 4180: a byte order mark is skipped, cells may be parted by another character, lines may end in CR LF, LF
// or CR, and empty lines are no records. Quotes within a cell that does not begin with one are taken as they stand. A
// quote that is never closed spoils only the line it stands on: reading goes on with the line after it.
CsvTable ParseCsv(std::string_view text, char separator = ',');

// The text without blanks, tabs and line breaks at either end.
std::string TrimmedCell(std::string_view text);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_CSV_TABLE_H_
