// Where the columns of a parts list stand.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_LIST_COLUMNS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_LIST_COLUMNS_H_

#include "scan-maker/list_layout.h"

#include <string>
#include <vector>

namespace benchleaf::scanmaker {

enum class ListCell { kItem, kDesignator, kDescription, kNumber, kMaker, kQuantity };

struct ListColumn {
  ListCell cell = ListCell::kDescription;
  int maker = 0;  // which one, of kMaker
  std::string title;
  double x = 0;      // px
  double width = 0;  // px
};

// The columns of a table between two edges, left to right; `hardware`: of one without designators.
std::vector<ListColumn> ColumnsOf(const ListLayout& layout, double left, double right, bool hardware);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_LIST_COLUMNS_H_
