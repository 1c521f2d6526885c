// Type numbers of diodes and transistors.

#ifndef BENCHLEAF_SRC_EXTRACT_SEMICONDUCTOR_H_
#define BENCHLEAF_SRC_EXTRACT_SEMICONDUCTOR_H_

#include "extract/rule_tables.h"

#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::extract {

// Whether the text in capitals is a type number by one of
// - JEDEC JESD370B (EIA RS-236): 1N34A, 2N2222, 3N128, 4N25;
// - JIS C 7012: 1S1588, 2SA234, 2SC1815Y, 3SK45;
// - Pro Electron: AC128, BC107B, BY127, BZX79, and the older OA79, OC71.
bool IsSemiconductor(std::string_view text);

struct RepairedType {
  std::string type;
  double sure = 0;  // 0 to 1
};

// The type number that a text as read looks like, when its letters or its first figure are badly read (IN34A is 1N34A,
// 2N4O4 is 2N404, 25C458 is 2SC458) and at least one letter of its class is right; nothing when it can be none. Pro
// Electron types have no such letters that nothing else has.
std::optional<RepairedType> SemiconductorLookingLike(std::string_view plain, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_SEMICONDUCTOR_H_
