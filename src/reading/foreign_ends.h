// Ink at a string's end that is no letter of it. Private to reading/.

#ifndef BENCHLEAF_SRC_READING_FOREIGN_ENDS_H_
#define BENCHLEAF_SRC_READING_FOREIGN_ENDS_H_

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/reading/page_reading.h"

#include <vector>

namespace benchleaf {

// The string that was read as `word`, without its first or its last component where the rest of the word has a
// designator's form and the component's ink differs from the others', which is alike: the tick of a pencil before R5,
// read as VR5, or the end of a wire at a pale one. Empty for most strings.
std::vector<TextString> WithoutForeignEnds(const CleanPage& page, const TextString& string, const Word& word);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_READING_FOREIGN_ENDS_H_
