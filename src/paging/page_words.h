// A page's lines as words in capitals, with what their place and size say.

#ifndef BENCHLEAF_SRC_PAGING_PAGE_WORDS_H_
#define BENCHLEAF_SRC_PAGING_PAGE_WORDS_H_

#include "extract/pieces.h"
#include "extract/rule_tables.h"

#include "benchleaf/reading/page_reading.h"

#include <string>
#include <vector>

namespace benchleaf::paging {

struct WordLine {
  extract::Line line;
  std::vector<std::string> words;  // in capitals, without punctuation
  bool title = false;              // in larger lettering, at the top of the page, or a figure's caption
};

// The page's upright lines, and its turned words each as a line of its own (titles stand turned on fold-outs), top to
// bottom.
std::vector<WordLine> WordLines(const PageReading& reading, const Rules::Tables& tables);

// Whether a line begins as the caption of a figure, section or table.
bool IsCaption(const std::vector<std::string>& words, const Rules::Tables& tables);

}  // namespace benchleaf::paging

#endif  // BENCHLEAF_SRC_PAGING_PAGE_WORDS_H_
