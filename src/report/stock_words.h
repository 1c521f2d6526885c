// How answers name a tube on hand: the same in every form of the report.

#ifndef BENCHLEAF_SRC_REPORT_STOCK_WORDS_H_
#define BENCHLEAF_SRC_REPORT_STOCK_WORDS_H_

#include "benchleaf/report/stock.h"

#include <string>
#include <vector>

namespace benchleaf {

// The sets that the report tells of.
std::vector<const SetAnswer*> SetsOf(const StockReport& report);

// "6AU6A, line 4: later or better type": what a tube on hand is to a socket, and why a person has to look at it first.
std::string OnHandWords(const StockReport& report, const OnHand& on_hand, const std::string& wanted);

// Types on hand that no table knows, each once.
std::vector<std::string> UnknownTypes(const StockReport& report);

// Positions of rows that no set has a socket for.
std::vector<std::size_t> RowsThatNoSetNeeds(const StockReport& report);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_REPORT_STOCK_WORDS_H_
