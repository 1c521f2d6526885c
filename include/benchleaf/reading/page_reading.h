// What reading a page gives: its words, where they stand, and measures that tell a drawing from a text page.

#ifndef BENCHLEAF_READING_PAGE_READING_H_
#define BENCHLEAF_READING_PAGE_READING_H_

#include "benchleaf/clean/page_measures.h"
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

struct PageReading {
  PageFrame frame;
  PageMeasures measures;
  std::vector<Word> words;  // top to bottom, then left to right

  friend bool operator==(const PageReading&, const PageReading&) = default;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_READING_PAGE_READING_H_
