// The answer to "what do I order for this set".

#ifndef BENCHLEAF_REPORT_ORDER_H_
#define BENCHLEAF_REPORT_ORDER_H_

#include "benchleaf/orders/order.h"
#include "benchleaf/report/table.h"

#include <string>

namespace benchleaf {

// What to order, what to look up on its page before (badly read, doubtful or not understood), what was left out, and
// the cautions that go with it.
std::string OrderText(const std::string& set, const Order& order, const Look& look);

// RFC 4180 with a header: count, order, value, code, rating, replaces, old, list_pages, confidence, check, note. A
// record for each item, and one with no count for each row that is not understood. See csv.h for what is done to fields
// that look like formulas.
std::string OrderCsv(const Order& order);

// {"type":"order-item"} and {"type":"order-unread"}, one object a line.
std::string OrderJson(const std::string& set, const Order& order);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_ORDER_H_
