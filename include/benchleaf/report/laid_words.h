// The words of a page as they are laid over a searchable copy of it.

#ifndef BENCHLEAF_REPORT_LAID_WORDS_H_
#define BENCHLEAF_REPORT_LAID_WORDS_H_

#include "benchleaf/raster/searchable_copy.h"
#include "benchleaf/record/manual_record.h"

#include <vector>

namespace benchleaf {

// Every word as read, in its own slant; where the index knows better what stands there (C12, read as Cl2), that. Terms
// that are no word of their own (C8 in the cell C4,8,11) lie side by side over the words that tell of them.
std::vector<LaidWord> LaidWords(const PageRecord& page);

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_LAID_WORDS_H_
