// Whether tubes on hand count as good, by what is said of them.

#ifndef BENCHLEAF_SRC_STOCK_TUBE_STATE_H_
#define BENCHLEAF_SRC_STOCK_TUBE_STATE_H_

#include "benchleaf/stock/stock_list.h"

namespace benchleaf::stock {

// Sets state and why from the row's condition and tester's result. Of what both say the worst counts, but that a
// tester's good is believed of used tubes. A figure alone says nothing: its limit is the tester's.
void SetState(StockRow& row, const StockWords& words, bool condition_stated);

}  // namespace benchleaf::stock

#endif  // BENCHLEAF_SRC_STOCK_TUBE_STATE_H_
