// Type numbers of diodes and transistors.

#ifndef BENCHLEAF_SRC_EXTRACT_SEMICONDUCTOR_H_
#define BENCHLEAF_SRC_EXTRACT_SEMICONDUCTOR_H_

#include <string_view>

namespace benchleaf::extract {

// Whether the text in capitals is a type number by one of
// - JEDEC JESD370B (EIA RS-236): 1N34A, 2N2222, 3N128, 4N25;
// - JIS C 7012: 1S1588, 2SA234, 2SC1815Y, 3SK45;
// - Pro Electron: AC128, BC107B, BY127, BZX79, and the older OA79, OC71.
bool IsSemiconductor(std::string_view text);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_SEMICONDUCTOR_H_
