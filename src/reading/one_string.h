// Reads one string of a page. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_ONE_STRING_H_
#define BENCHLEAF_SRC_READING_ONE_STRING_H_

#include "reading/line_reader.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/reading/page_reading.h"

#include <vector>

namespace benchleaf {

// What a string of the page looks like, for telling how far to trust its readings.
StringLook LookOf(const CleanPage& page, const TextString& string);

// The words of a string, some of them rivals for one place; nothing where its ink is no lettering. `turn` is 0 or 180
// for a lying string, 90 or 270 for a standing one.
std::vector<Word> ReadOne(const CleanPage& page, const TextString& string, int turn, LineReader& reader);

// A designator whose letters stand apart, read with the gaps closed; nothing where none stand apart, and for whatever
// else stands so.
std::vector<Word> ReadSpaced(const CleanPage& page, const StringCrop& crop, const TextString& string,
                             LineReader& reader);

// The surest word, or the end.
std::vector<Word>::const_iterator Surest(const std::vector<Word>& words);

// How sure that is; 0 without words.
double BestConfidence(const std::vector<Word>& words);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_ONE_STRING_H_
