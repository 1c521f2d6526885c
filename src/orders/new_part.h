// What takes the place of an old part.

#ifndef BENCHLEAF_SRC_ORDERS_NEW_PART_H_
#define BENCHLEAF_SRC_ORDERS_NEW_PART_H_

#include "benchleaf/orders/order.h"

namespace benchleaf::orders {

// In place of a capacitor. `line`: where the list says that it stands at the line; `alternating`: its volts are of
// alternating current.
NewPart NewCapacitor(PartKind kind, const CapacitorSection& old, bool alternating, std::optional<LinePlace> line);

// REQUIRES: old.ohms.
NewPart NewResistor(PartKind kind, const OldRating& old);

// In place of a selenium rectifier: the diode, and the resistor that goes in series with it.
std::vector<NewPart> NewRectifier(const OldRating& old);

}  // namespace benchleaf::orders

#endif  // BENCHLEAF_SRC_ORDERS_NEW_PART_H_
