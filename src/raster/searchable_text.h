// Text that is laid over a page without being drawn.

#ifndef BENCHLEAF_SRC_RASTER_SEARCHABLE_TEXT_H_
#define BENCHLEAF_SRC_RASTER_SEARCHABLE_TEXT_H_

#include "raster/page_layout.h"

#include "benchleaf/raster/searchable_copy.h"

#include <map>
#include <string>
#include <vector>

namespace benchleaf {

// Numbers every character that is laid, over all pages of one document: one font holds 256 of them.
class LaidCharacters {
 public:
  // Font and code of a character.
  struct Code {
    int font = 0;
    unsigned char code = 0;
  };
  Code CodeOf(char32_t character);

  int fonts() const { return (static_cast<int>(characters_.size()) + kPerFont - 1) / kPerFont; }

  // The characters of a font by their codes, as a stream that tells readers which they are (ISO 32000-1, 9.10.3).
  std::string ToUnicode(int font) const;
  // As the differences from an encoding that has none of them (9.6.6): "1 /u0041 /u0042".
  std::string Differences(int font) const;

  static constexpr int kPerFont = 255;  // code 0 stays unused
  static constexpr int kWidth = 600;    // of every character, in thousandths of the size

 private:
  std::map<char32_t, int> places_;
  std::vector<char32_t> characters_;
};

// The content stream that lays the words, on a page whose visible part and turn are those of the layout. Fonts go by
// the name prefix + number.
std::string LayWords(const std::vector<LaidWord>& words, const PageLayout& page, const std::string& font_prefix,
                     LaidCharacters& characters);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_RASTER_SEARCHABLE_TEXT_H_
