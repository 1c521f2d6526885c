// Reads a clean page string by string. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_STRING_READING_H_
#define BENCHLEAF_SRC_READING_STRING_READING_H_

#include "reading/recognizer.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/reading/page_reading.h"

#include <vector>

namespace benchleaf {

// The turn (0, 90, 180 or 270 degrees clockwise) that makes the page upright, by reading a sample of its longest
// strings in every direction they may have. 0 when nothing tells.
int FindOrientation(const CleanPage& page, Recognizer& recognizer);

// Every word of the page, lying and standing; where two readings claim one place, the likelier one.
std::vector<Word> ReadStrings(const CleanPage& page, Recognizer& recognizer);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_STRING_READING_H_
