// Pages of running text with headings, ruled tables and lines of leaders: contents, specifications, alignment.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_TEXT_PAGE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_TEXT_PAGE_H_

#include "scan-maker/made_page.h"
#include "scan-maker/page_furniture.h"

#include <string>
#include <vector>

namespace benchleaf::scanmaker {

struct TextBlock {
  enum class Kind { kTitle, kHeading, kParagraph, kLeaders, kTable };

  Kind kind = Kind::kParagraph;
  std::string text;                            // of titles, headings and paragraphs
  std::vector<std::vector<std::string>> rows;  // of leaders (two cells a row) and tables (the first row is the head)
  std::vector<double> widths;                  // of a table's columns, as shares of the type area
};

// `kind` as benchleaf::Name(PageKind) has it. Words that the book knows become terms. Blocks that find no room on the
// page are left out.
MadePage MakeTextPage(const std::string& kind, const std::vector<TextBlock>& blocks, const PageFurniture& furniture,
                      const TermBook& book);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_TEXT_PAGE_H_
