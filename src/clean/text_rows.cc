#include "clean/text_rows.h"

#include "clean/lettering_height.h"

#include <algorithm>
#include <cstddef>
#include <limits>

namespace benchleaf {
namespace {

// Gaps that columns of a list leave between them.
constexpr JoinGaps kColumnGaps{.lying = 9, .standing = 0, .over_punctuation = true};

struct MarksInRows {
  std::size_t marks = 0;    // letters and punctuation
  std::size_t letters = 0;  // of these
};

// What stands in rows of `fewest` marks and more that are no higher than `most_caps` capitals. On a dusty drawing,
// specks and ends of wires make rows, too; of a row's marks a third are letters, even where dots lead from one to the
// next.
MarksInRows CountInRows(const CleanPage& page, const JoinGaps& gaps, std::size_t fewest, double most_caps) {
  constexpr std::size_t kLettersOneOf = 3;
  const double highest = most_caps * page.measures.cap_height_px;
  MarksInRows found;
  for (const TextString& string : FindStrings(page, gaps)) {
    const std::size_t marks = string.members.size();
    const auto letters =
        static_cast<std::size_t>(std::count_if(string.members.begin(), string.members.end(), [&](std::size_t member) {
          return IsGlyphLike(page.components.items[member], page.measures.cap_height_px);
        }));
    if (marks >= fewest && string.box.height <= highest && letters * kLettersOneOf >= marks) {
      found.marks += marks;
      found.letters += letters;
    }
  }
  return found;
}

}  // namespace

void MeasureText(CleanPage& page) {
  const double cap = page.measures.cap_height_px;
  double dark_px = 0;
  for (const Component& component : page.components.items) {
    page.measures.glyphs += IsGlyphLike(component, cap) ? 1 : 0;
    // A photograph thresholds to large blobs that fill much of their box.
    const double area = 1.0 * component.box.width * component.box.height;
    if (component.box.width > 6 * cap && component.box.height > 6 * cap && component.ink > 0.3 * area) {
      dark_px += area;
    }
  }
  page.measures.dark_share =
      std::min(1.0, dark_px / std::max(1.0, 1.0 * page.frame.level_width * page.frame.level_height));

  // Across wide gaps, letters of a drawing tie several rows together.
  constexpr double kOneRow = 2.2;
  constexpr double kAnyHeight = std::numeric_limits<double>::infinity();
  const MarksInRows phrases = CountInRows(page, kPhraseGaps, 8, kAnyHeight);
  const MarksInRows rows = CountInRows(page, kColumnGaps, 12, kOneRow);
  const auto share = [&](std::size_t marks) {
    return page.measures.glyphs == 0 ? 0 : std::min(1.0, static_cast<double>(marks) / page.measures.glyphs);
  };
  page.measures.text_row_share = share(phrases.marks);
  page.measures.long_row_share = share(rows.letters);
}

}  // namespace benchleaf
