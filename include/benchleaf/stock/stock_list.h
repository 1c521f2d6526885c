// A table of tubes on hand (CSV) as rows of which each says what it is and whether it counts.

#ifndef BENCHLEAF_STOCK_STOCK_LIST_H_
#define BENCHLEAF_STOCK_STOCK_LIST_H_

#include "benchleaf/core/result.h"
#include "benchleaf/stock/stock_words.h"
#include "benchleaf/tubes/tube_table.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// Whether the tubes of a row count as good.
enum class StockState {
  kGood,       // new, or found good by a tester
  kNotStated,  // the table has no column that could say; taken for good
  kUnproven,   // used, untested, or nothing that is understood is said of them: not counted before a tester says good
  kBad,        // weak, gassy, shorted, ...: never counted
};

// "good", "not stated", "unproven", "bad".
std::string_view Name(StockState state);

struct StockRow {
  int line = 0;           // of the table, counted from 1
  std::string type;       // canonical, by the marking on the glass where that can be read
  int count = 0;          // of tubes, at least 1
  std::string listed;     // the cells as written, empty where there are none: type,
  std::string glass;      // marking on the glass,
  std::string box;        // marking on the box,
  std::string condition;  // condition,
  std::string tester;     // tester's result,
  std::string place;      // where the tubes lie
  StockState state = StockState::kGood;
  std::string why;                   // they do not count; empty when they do
  std::vector<std::string> remarks;  // "the box says 6AV6": for a person to look at

  bool counts() const { return state == StockState::kGood || state == StockState::kNotStated; }
};

struct StockList {
  std::vector<StockRow> rows;       // in the order of the table
  std::vector<Error> faults;        // rows that were left out, by line and column
  std::vector<std::string> unused;  // titles of columns that nothing was taken from
  bool condition_stated = false;    // there is a column of condition or tester's result
};

// Reads the table: RFC 4180, commas or semicolons (whichever the first line has more of), UTF-8, with or without a byte
// order mark; the first line names the columns in any order and case. A row that cannot be used becomes a fault and the
// rest counts; rows that count no tube are left out silently. `source` is named by errors. Fails with kUsage when no
// row can be used: no table, another encoding, no column of types.
Result<StockList> ParseStock(std::string_view text, const std::string& source, const StockWords& words,
                             const TubeTable& tubes);

}  // namespace benchleaf

#endif  // BENCHLEAF_STOCK_STOCK_LIST_H_
