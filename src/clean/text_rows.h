// Measures how much of a page is running text. Private to clean/.

#ifndef BENCHLEAF_SRC_CLEAN_TEXT_ROWS_H_
#define BENCHLEAF_SRC_CLEAN_TEXT_ROWS_H_

#include "benchleaf/clean/clean_page.h"

namespace benchleaf {

// Sets glyphs, text_row_share, long_row_share and dark_share of the page's measures.
// REQUIRES: components and cap height are known.
void MeasureText(CleanPage& page);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLEAN_TEXT_ROWS_H_
