// What a page looks like, counted: how much of it is terms, words, rows, lines.

#ifndef BENCHLEAF_SRC_PAGING_PAGE_SHAPE_H_
#define BENCHLEAF_SRC_PAGING_PAGE_SHAPE_H_

#include "extract/rule_tables.h"
#include "paging/page_words.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/paging/page_facts.h"

#include <array>
#include <cstddef>
#include <vector>

namespace benchleaf::paging {

struct PageShape {
  std::size_t words = 0;
  std::size_t plain_words = 0;  // letters only, three and more
  std::size_t designators = 0;
  std::size_t tube_designators = 0;
  std::size_t tubes = 0;
  std::size_t values = 0;
  std::size_t list_rows = 0;       // that name a designator or a part number
  std::size_t numbered_rows = 0;   // that name a part number
  std::size_t numbered_lines = 0;  // that end in a number, as in a table of contents
  std::size_t lines = 0;           // of two words and more
  bool large_lettering = false;    // some lettering twice the usual size
};

PageShape ShapeOf(const PageReading& reading, const PageRows& rows, const std::vector<WordLine>& lines,
                  const Rules::Tables& tables);

constexpr std::size_t kKinds = 13;
// By position in PageKind; 0 for kinds of which the shape says nothing.
using KindScores = std::array<double, kKinds>;

// How much the shape speaks for each kind, on the scale of the weights in config/page-kinds.tsv.
KindScores ScoresOfShape(const PageShape& shape, const PageMeasures& measures);

}  // namespace benchleaf::paging

#endif  // BENCHLEAF_SRC_PAGING_PAGE_SHAPE_H_
