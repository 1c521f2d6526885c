// The cautions that go with an order.

#ifndef BENCHLEAF_SRC_ORDERS_CAUTIONS_H_
#define BENCHLEAF_SRC_ORDERS_CAUTIONS_H_

#include "benchleaf/orders/order.h"

#include <string>
#include <vector>

namespace benchleaf::orders {

// Those for everybody, and those for the kinds of parts that the order replaces.
std::vector<std::string> CautionsFor(const Order& order);

}  // namespace benchleaf::orders

#endif  // BENCHLEAF_SRC_ORDERS_CAUTIONS_H_
