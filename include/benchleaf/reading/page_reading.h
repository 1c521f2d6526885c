// What reading a page gives: its words, where they stand, and measures that tell a drawing from a text page.

#ifndef BENCHLEAF_READING_PAGE_READING_H_
#define BENCHLEAF_READING_PAGE_READING_H_

#include "benchleaf/core/geometry.h"

#include <string>
#include <vector>

namespace benchleaf {

// How a word came to be known.
enum class WordOrigin {
  kString,  // an isolated string of the page, read on its own
  kPage,    // read with its whole page, as running text or a list
  kLayer,   // taken from the file's text layer
};

// Another text that a reader saw in the same place.
struct Alternative {
  std::string text;
  double confidence = 0;  // 0 to 1

  friend bool operator==(const Alternative&, const Alternative&) = default;
};

struct Word {
  std::string text;  // UTF-8, as read, no spaces within
  Box box;           // px of the level page
  int turn = 0;      // degrees clockwise that the word stands turned from upright on the level page: 0, 90, 180, 270
  double confidence = 0;  // 0 to 1
  WordOrigin origin = WordOrigin::kString;
  std::vector<Alternative> alternatives;

  friend bool operator==(const Word&, const Word&) = default;
};

// Measures of the level page, before any reading.
struct PageMeasures {
  double cap_height_px = 0;   // capital height of the page's lettering on the level page
  int glyphs = 0;             // components of the size of a letter
  int long_lines = 0;         // straight ruled lines of at least a twelfth of the page
  double line_ink = 0;        // ink in straight lines over all ink: 0 to 1
  double text_row_share = 0;  // glyphs that stand in rows of eight and more, over all glyphs: 0 to 1
  double dark_share = 0;      // share of the page's area under large dark patches (photographs): 0 to 1

  friend bool operator==(const PageMeasures&, const PageMeasures&) = default;
};

struct PageReading {
  PageFrame frame;
  PageMeasures measures;
  std::vector<Word> words;  // top to bottom, then left to right

  friend bool operator==(const PageReading&, const PageReading&) = default;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_READING_PAGE_READING_H_
