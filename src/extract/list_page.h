// A parts-list page as a whole: its tables' rows with their fields, in reading order.

#ifndef BENCHLEAF_SRC_EXTRACT_LIST_PAGE_H_
#define BENCHLEAF_SRC_EXTRACT_LIST_PAGE_H_

#include "extract/list_rows.h"
#include "extract/row_fields.h"
#include "extract/rule_tables.h"

#include "benchleaf/reading/page_reading.h"

#include <string>
#include <vector>

namespace benchleaf::extract {

struct ListPageRow {
  ListRow row;
  RowFields fields;
};

// The rows, none for a page that holds no parts list. `assembly` is the heading in force, brought up to date.
std::vector<ListPageRow> ReadListPage(const PageReading& reading, const Rules::Tables& tables, std::string& assembly);

// Whether the page's lettering stands scattered, as on a drawing. Lists measure 0.75 and more, schematics up to 0.5.
// False where nothing is known of the page.
bool IsScattered(const PageMeasures& measures);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_LIST_PAGE_H_
