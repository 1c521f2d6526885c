// Several designators written as one: R1-R8, R1 THRU R8, D1~4, C12,14,17, C103,105-108, C1A/B/C.

#ifndef BENCHLEAF_SRC_EXTRACT_DESIGNATOR_RANGE_H_
#define BENCHLEAF_SRC_EXTRACT_DESIGNATOR_RANGE_H_

#include "extract/designator.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::extract {

// Where the text stands tells what a dash means: in a parts list J1-4 is J1 to J4, on a drawing it is pin 4 of J1.
enum class RangeStyle { kList, kDrawing };

// The designators in order; one for a text that is a single designator; nothing when any part of the text does not
// fit. Words for "to" and "and" may stand for the signs. `previous` gives letters and number to a text that goes on
// from the row above ("17,21", or "B" for a section of C1A).
std::optional<std::vector<Designator>> ExpandDesignators(std::string_view plain, const Rules::Tables& tables,
                                                         RangeStyle style, const Designator* previous = nullptr,
                                                         LoneStrokes lone_strokes = LoneStrokes::kRefuse);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_DESIGNATOR_RANGE_H_
