// The order in which a person counts: page-2 before page-10.

#ifndef BENCHLEAF_LIBRARY_NATURAL_ORDER_H_
#define BENCHLEAF_LIBRARY_NATURAL_ORDER_H_

#include <string>
#include <string_view>

namespace benchleaf {

// Compares runs of digits as numbers, ASCII letters without case, and '/' before everything else, so that a folder's
// own files come before those of its subfolders. Texts that are equal in that sense are ordered by their bytes: a
// strict order of all byte strings.
bool NaturalLess(std::string_view a, std::string_view b);

// The text with ASCII letters in lower case; all other bytes as they are, whatever the locale.
std::string LowerAscii(std::string_view text);

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_NATURAL_ORDER_H_
