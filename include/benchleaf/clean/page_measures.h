// Measures of a page's ink that tell a drawing from a text page before anything is read.

#ifndef BENCHLEAF_CLEAN_PAGE_MEASURES_H_
#define BENCHLEAF_CLEAN_PAGE_MEASURES_H_

namespace benchleaf {

struct PageMeasures {
  double cap_height_px = 0;   // capital height of the page's lettering on the level page
  int glyphs = 0;             // components of the size of a letter
  int long_lines = 0;         // straight ruled lines of at least a twelfth of the page
  double line_ink = 0;        // ink in straight lines over all ink: 0 to 1
  double text_row_share = 0;  // what stands in rows of eight marks and more, over all glyphs: 0 to 1
  double long_row_share = 0;  // letters of rows of twelve marks and more that columns' gaps may part, over all: 0 to 1
  double dark_share = 0;      // share of the page's area under large dark patches (photographs): 0 to 1

  friend bool operator==(const PageMeasures&, const PageMeasures&) = default;
};

// Whether the page is one of text or of a table, by its marks. Phrases tell where they are long: of most lists 0.67 and
// more stand in rows, of drawings 0.54 and less, at all grades. Where cells are short, a table's whole rows tell: of
// lists 0.55 and more stand in long ones, of drawings with as many letters 0.34 and less (development pages of
// bench_lists, bench_outside and bench_kinds; on drawings with few letters their titles weigh too much).
inline bool StandsInRows(const PageMeasures& measures) {
  constexpr int kManyGlyphs = 500;
  return measures.text_row_share >= 0.65 || (measures.glyphs >= kManyGlyphs && measures.long_row_share >= 0.5);
}

}  // namespace benchleaf

#endif  // BENCHLEAF_CLEAN_PAGE_MEASURES_H_
