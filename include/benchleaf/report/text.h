// Text on its way to a terminal: made harmless, measured in columns, broken into lines.

#ifndef BENCHLEAF_REPORT_TEXT_H_
#define BENCHLEAF_REPORT_TEXT_H_

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// The text with nothing in it that a terminal would obey. Words read from scans and names of files are foreign text:
// an escape sequence in them must not colour, move or retitle the terminal. Tabs and line breaks become spaces; other
// control characters, characters that change the direction of writing, and bytes that are not UTF-8 become U+FFFD.
std::string CleanText(std::string_view text);

// Columns that the text takes on a terminal: two for wide characters (CJK), none for combining marks.
int DisplayWidth(std::string_view utf8);

// The text in lines of at most `width` columns, broken at spaces, and within a word only when the word alone is wider.
// At least one line; a single character wider than `width` has a line to itself.
// REQUIRES: width >= 1.
std::vector<std::string> Wrapped(std::string_view utf8, int width);

// "1 place", "3 places": `noun` is one that takes an s.
std::string Counted(std::size_t count, std::string_view noun);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_TEXT_H_
