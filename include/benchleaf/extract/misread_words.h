// Under what a term is found that was misread, or taken for no term at all.

#ifndef BENCHLEAF_EXTRACT_MISREAD_WORDS_H_
#define BENCHLEAF_EXTRACT_MISREAD_WORDS_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/reading/page_reading.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// What the readings of a word may name, for the index: each with look-alikes folded (FoldLookAlikes), without signs at
// its edges, and once more without a stroke in front of it (IV4: the outline of a part beside V4). Only texts of 2 to
// 14 characters with a figure, which terms have, and only readings that are not mere scraps. Sorted, each once.
std::vector<std::string> FoldedReadings(const Word& word, const Rules& rules);

// How surely the word is the term (canonical), by its best reading: the reading's confidence, less for every character
// that has to be taken for another; 0 when no reading comes near. The costs of confusions were judged from readings of
// the development lists at 200 and 150 dpi.
double LikenessOf(const Word& word, std::string_view term, const Rules& rules);
// The same for one text that was read, as a factor of 0 to 1.
double LikenessOf(std::string_view read, std::string_view term, const Rules& rules);

// Whether texts that begin so may come near the term, so that a sorted list of texts is walked through without looking
// at all of them: none does; only those that go on with a character of the term; or any. Whole characters begin a text.
enum class Beginning { kNoLikeness, kWithItsCharacters, kWithAny };
Beginning BeginningOf(std::string_view beginning, std::string_view term, const Rules& rules);

}  // namespace benchleaf

#endif  // BENCHLEAF_EXTRACT_MISREAD_WORDS_H_
