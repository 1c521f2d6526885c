// Part and stock numbers, by the patterns of config/part-numbers.tsv.

#ifndef BENCHLEAF_SRC_EXTRACT_PART_NUMBER_H_
#define BENCHLEAF_SRC_EXTRACT_PART_NUMBER_H_

#include "extract/rule_tables.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace benchleaf::extract {

enum class PartPlace { kAnywhere, kList };

// How surely the text in capitals is a part number: 0 for none. Outside lists only forms that can be nothing else
// count.
double SureOfPartNumber(std::string_view text, const Rules::Tables& tables, PartPlace place);

// How many figures a word that fits the pattern has at least, as far as is plain from its "[0-9]" outside brackets;
// never too many.
std::size_t LeastFigures(std::string_view pattern);

// A part number with its noughts: a ring beside a figure is none of its letters, which leave out O since it looks like
// a nought (ASME Y14.100 for drawing and part numbers, from memory; common practice elsewhere).
std::string WithNoughts(std::string_view text);

// The form of a part number: figures as '9', letters as 'A', everything else as it is (RC20-4 is "AA99-9").
std::string ShapeOf(std::string_view text);

// The text with look-alikes exchanged so that it has the shape, or "" when it cannot have it. Figures and letters that
// are right already stay. Dashes that were lost come back, doubled ones go, and so does one stroke too many in front,
// which is a ruled line.
std::string FittedToShape(std::string_view text, std::string_view shape, const Rules::Tables& tables);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_PART_NUMBER_H_
