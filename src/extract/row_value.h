// The value that a parts list's description states.

#ifndef BENCHLEAF_SRC_EXTRACT_ROW_VALUE_H_
#define BENCHLEAF_SRC_EXTRACT_ROW_VALUE_H_

#include "extract/pieces.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::extract {

// The first value of the quantity that parts with these class letters are measured in; for other classes the first
// resistance, capacitance, inductance or frequency. A capacitor's bare decimal (.05) counts. Canonical; empty when the
// description states none.
std::string ValueOf(const std::vector<Piece>& description, std::string_view letters);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_ROW_VALUE_H_
