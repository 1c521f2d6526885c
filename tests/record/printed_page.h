// Pages made by printing words on them, for tests of what is found on pages.

#ifndef BENCHLEAF_TESTS_RECORD_PRINTED_PAGE_H_
#define BENCHLEAF_TESTS_RECORD_PRINTED_PAGE_H_

#include "benchleaf/record/manual_record.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>

namespace benchleaf {

// A page of 1000 x 1000 px, upright, with capitals 20 px high and 16 px apart.
inline PageRecord PrintedPage(PageKind kind, int number, const std::string& printed_number = "") {
  constexpr int kSide = 1000;
  PageRecord page;
  page.file = "m.pdf";
  page.page = number;
  page.facts.kind = kind;
  page.facts.printed_number = printed_number;
  page.reading.frame = {.scan_width = kSide,
                        .scan_height = kSide,
                        .dpi = 200,
                        .orientation = 0,
                        .scale = 1,
                        .skew_degrees = 0,
                        .level_width = kSide,
                        .level_height = kSide};
  page.reading.measures.cap_height_px = 20;
  return page;
}

// Puts a word on the page and, when it is a term, the sighting of it.
inline void Print(PageRecord& page, const std::string& text, int x, int y, std::optional<TermKind> kind = std::nullopt,
                  const std::string& assembly = "", double confidence = 0.9) {
  Word word;
  word.text = text;
  word.box = {x, y, static_cast<int>(16 * text.size()), 20};
  word.confidence = confidence;
  page.reading.words.push_back(word);
  if (!kind) return;
  Sighting sighting;
  sighting.kind = *kind;
  sighting.text = sighting.read = text;
  sighting.box = ToScan(page.reading.frame, word.box);
  sighting.confidence = confidence;
  sighting.assembly = assembly;
  page.sightings.push_back(sighting);
}

// The words of a line, a letter's width apart.
inline void PrintLine(PageRecord& page, const std::string& line, int x, int y, double confidence = 0.9) {
  std::size_t from = 0;
  while (from < line.size()) {
    const std::size_t end = std::min(line.find(' ', from), line.size());
    if (end > from) {
      Print(page, line.substr(from, end - from), x + static_cast<int>(16 * from), y, std::nullopt, "", confidence);
    }
    from = end + 1;
  }
}

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_RECORD_PRINTED_PAGE_H_
