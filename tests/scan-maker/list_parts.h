// What a layout does to the parts themselves before they become rows: sockets and unused numbers are added, sections of
// a part stand apart, part numbers take another form.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_LIST_PARTS_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_LIST_PARTS_H_

#include "scan-maker/circuit.h"
#include "scan-maker/list_layout.h"

#include <string>
#include <vector>

namespace benchleaf::scanmaker {

std::vector<Part> PartsAsListed(const std::vector<Part>& parts, const ListLayout& layout);

// The number that another maker gives to the part, empty where he makes none. Six invented makers, counted from 0, each
// with his own form of numbers.
std::string MakersNumber(const Part& part, int maker);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_LIST_PARTS_H_
