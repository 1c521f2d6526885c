#include "clean/text_rows.h"

#include "clean/lettering_height.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf {

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

  // On a dusty drawing, specks and ends of wires make rows, too; of a row's marks a third are letters, even where dots
  // lead from one to the next.
  constexpr std::size_t kRowMarks = 8;
  constexpr std::size_t kLettersOneOf = 3;
  std::size_t in_rows = 0;
  for (const TextString& string : FindStrings(page, kPhraseGaps)) {
    const auto letters =
        static_cast<std::size_t>(std::count_if(string.members.begin(), string.members.end(), [&](std::size_t member) {
          return IsGlyphLike(page.components.items[member], cap);
        }));
    const std::size_t marks = string.members.size();
    in_rows += marks >= kRowMarks && letters * kLettersOneOf >= marks ? marks : 0;
  }
  page.measures.text_row_share =
      page.measures.glyphs == 0 ? 0 : std::min(1.0, static_cast<double>(in_rows) / page.measures.glyphs);
}

}  // namespace benchleaf
