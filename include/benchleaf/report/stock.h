// The answer to "which of my sets do these tubes serve".

#ifndef BENCHLEAF_REPORT_STOCK_H_
#define BENCHLEAF_REPORT_STOCK_H_

#include "benchleaf/report/table.h"
#include "benchleaf/stock/serve_sets.h"
#include "benchleaf/stock/stock_list.h"
#include "benchleaf/tubes/tube_table.h"

#include <string>

namespace benchleaf {

// Everything that the reports tell of.
struct StockReport {
  const StockList& list;
  const StockAnswer& answer;  // for all sets of the library
  const TubeTable& tubes;
  std::string set;  // the one set to tell of; empty: all of them
};

// Sets with what serves them and what they lack, socket by socket for one set; then what all sets together take more of
// than there is, what is not counted and why, markings that disagree, what no set needs, and what types that no table
// knows say by their numbers. The last two are left out for one set.
std::string StockText(const StockReport& report, const Look& look);

// RFC 4180 with a header, a record a socket: set, verdict, designator, type, confidence, file, page, where, served_by,
// standing, line, place, perhaps. See csv.h for what is done to fields that look like formulas.
std::string StockCsv(const StockReport& report);

// One object a line: {"type":"stock-set"} with its sockets, {"type":"stock-claims"} for what is claimed too often,
// {"type":"stock-row"} for each row of the list, {"type":"tube-type"} for types that no table knows.
std::string StockJson(const StockReport& report);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_STOCK_H_
