// Reads a clean page string by string. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_STRING_READING_H_
#define BENCHLEAF_SRC_READING_STRING_READING_H_

#include "reading/line_reader.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/reading/page_reading.h"

#include <vector>

namespace benchleaf {

// Every word of the page, lying and standing; where two readings claim one place, the likelier one.
std::vector<Word> ReadStrings(const CleanPage& page, LineReader& reader);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_STRING_READING_H_
