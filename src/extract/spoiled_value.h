// Values of which a scan has spoiled a letter: S00 MMF for 500 MMF, .1 MED for .1 MFD.

#ifndef BENCHLEAF_SRC_EXTRACT_SPOILED_VALUE_H_
#define BENCHLEAF_SRC_EXTRACT_SPOILED_VALUE_H_

#include "extract/value.h"

#include <optional>
#include <string_view>

namespace benchleaf::extract {

// A text that ParseValue does not take, as a value of that quantity: letters among the figures are the figures that
// they look like, and one letter of a unit of three and more may be wrong. Nothing for a number without any true figure
// or with a letter like a nought in front (o1 may be .1 or .01), and for a proper unit of another quantity.
std::optional<Value> ParseSpoiledValue(std::string_view plain, Quantity quantity);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_SPOILED_VALUE_H_
