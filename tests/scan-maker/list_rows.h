// From parts to the rows that a parts list prints.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_LIST_ROWS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_LIST_ROWS_H_

#include "scan-maker/parts_list_page.h"

#include <string>
#include <vector>

namespace benchleaf::scanmaker {

struct ListRow {
  std::string heading;  // of an assembly or class: then the row has nothing else
  bool assembly_heading = false;
  std::string assembly;            // in force for the row
  std::vector<Token> designators;  // pieces between which the cell may be broken: "C4,", "5,", "8-10"
  std::vector<std::string> parts;  // each designator by itself; one empty text for a row without designators
  std::vector<Token> description;
  std::string description_text;
  Token number;               // as printed; without text where none is
  std::string part_number;    // the one that holds for the row, printed here or above
  std::vector<Token> makers;  // other makers' numbers, some without text
  std::string item;           // its number, in lists by items
  std::string quantity;
  std::string value;  // canonical
};

std::vector<ListRow> RowsOf(const std::vector<ListSection>& sections, const ListLayout& layout);

// Rows of mechanical parts, which have no designators.
std::vector<ListRow> HardwareRows(const ListLayout& layout, int count);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_LIST_ROWS_H_
