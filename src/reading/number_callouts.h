// Drawings that call their parts out by the numbers of a list's rows. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_NUMBER_CALLOUTS_H_
#define BENCHLEAF_SRC_READING_NUMBER_CALLOUTS_H_

#include "reading/line_reader.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/reading/page_reading.h"

#include <vector>

namespace benchleaf {

// Whether the words are those of such a drawing: many are a number of two figures and more, and few have a
// designator's form.
bool CallsOutByNumber(const std::vector<Word>& words);

// A figure by itself, as it reads best: upright, or running up or down the page. Nothing where it reads as no figure.
std::vector<Word> ReadFigure(const CleanPage& page, const TextString& string, LineReader& reader);

// Puts numbers that stand turned in the place of what they seem to be otherwise: a 2 on its side is a fair N, and 26
// read upwards a 9Z. Letters by themselves, of which such drawings have none, are dropped. `strings` are those that
// stand.
void TurnNumbers(const CleanPage& page, const std::vector<TextString>& strings, LineReader& reader,
                 std::vector<Word>& words);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_NUMBER_CALLOUTS_H_
