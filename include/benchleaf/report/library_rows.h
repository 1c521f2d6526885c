// A library's files as rows of library.csv.

#ifndef BENCHLEAF_REPORT_LIBRARY_ROWS_H_
#define BENCHLEAF_REPORT_LIBRARY_ROWS_H_

#include "benchleaf/library/library.h"

#include <string>
#include <vector>

namespace benchleaf {

// What a row says; cells are empty where nothing is known.
struct LibraryRow {
  std::string file;  // or the folder whose files are the pages of one manual
  std::string maker;
  std::string model;  // the set's name where maker and model are not stated
  std::string volume;
  std::string title;
};

// A row a file, by set and manual; pages that have a folder to themselves have one row. Read as library.csv, the rows
// say what is so without them.
std::vector<LibraryRow> LibraryRows(const ScannedLibrary& library);

// With a header, by RFC 4180.
std::string LibraryCsv(const std::vector<LibraryRow>& rows);

// One {"type":"file"} object a line.
std::string LibraryJson(const std::vector<LibraryRow>& rows);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_LIBRARY_ROWS_H_
