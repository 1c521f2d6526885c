// Text as a parts list sets it.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_LIST_TEXT_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_LIST_TEXT_H_

#include "scan-maker/sheet.h"

#include <string>
#include <vector>

namespace benchleaf::scanmaker {

// In capitals where the lettering has no others.
std::vector<Token> Shown(std::vector<Token> row, Lettering lettering);

// Breaks the pieces of a designator cell into lines; unlike words they stand close together.
std::vector<std::vector<Token>> BrokenDesignators(const std::vector<Token>& pieces, const TextStyle& style,
                                                  double width);

// Specifications as they stand above the tables of short manuals, a text each line. They hold figures, but no parts.
const std::vector<std::string>& SpecificationLines();

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_LIST_TEXT_H_
