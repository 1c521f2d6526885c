// Which of several readings of one place is kept. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_WORD_CHOICE_H_
#define BENCHLEAF_SRC_READING_WORD_CHOICE_H_

#include "benchleaf/reading/page_reading.h"

#include <string_view>
#include <vector>

namespace benchleaf {

// One to three capital letters and one to four digits, perhaps with an assembly before and a section letter behind:
// what a reference designator looks like (ASME Y14.44). A dash may stand before up to three digits, as old sets print
// it. Says nothing of whether it is one.
bool HasDesignatorForm(std::string_view text);
bool HasDesignatorForm(const std::vector<Word>& words);

// Of words that overlap by 40 % of the smaller, keeps the one that has a designator's form, then the surer one; the
// texts of the others become its alternatives. Words without a letter or digit are dropped.
std::vector<Word> ChooseWords(std::vector<Word> words);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_WORD_CHOICE_H_
