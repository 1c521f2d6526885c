// The tube type in what stands on a tube or its box, or in a person's list.

#ifndef BENCHLEAF_SRC_STOCK_TUBE_MARKING_H_
#define BENCHLEAF_SRC_STOCK_TUBE_MARKING_H_

#include "benchleaf/tubes/tube_table.h"

#include <string>
#include <string_view>

namespace benchleaf::stock {

// "6 sn7-gt" is 6SN7GT, "JAN 5751" 5751, "12AX7A / ECC83" 12AX7A/ECC83, "FERNWELL 6AU6 made in ..." 6AU6. A text in
// which no type is known is given in capitals without spaces: it may be one that no table and no standard knows.
std::string TypeInMarking(std::string_view marking, const TubeTable& tubes);

// Whether a table knows the type, or a standard explains all of it.
bool IsKnownType(std::string_view type, const TubeTable& tubes);

}  // namespace benchleaf::stock

#endif  // BENCHLEAF_SRC_STOCK_TUBE_MARKING_H_
