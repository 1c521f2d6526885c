// Designators lettered with wide spaces between their letters: R 1 2.

#ifndef BENCHLEAF_CLEAN_SPACED_STRINGS_H_
#define BENCHLEAF_CLEAN_SPACED_STRINGS_H_

#include "benchleaf/clean/clean_page.h"

#include <vector>

namespace benchleaf {

// Two to five of the lying `strings` of one letter each, that follow each other on a row with wide and even gaps. May
// be anything that stands so, pins' numbers for one.
std::vector<TextString> FindSpacedStrings(const CleanPage& page, const std::vector<TextString>& strings);

// A line's crop with the gaps between its letters made as narrow as usual.
GreyImage ClosedUp(const GreyImage& line);

}  // namespace benchleaf

#endif  // BENCHLEAF_CLEAN_SPACED_STRINGS_H_
