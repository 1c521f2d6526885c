#include "raster/searchable_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <cstdint>

namespace benchleaf {
namespace {

struct Point {
  double x = 0;
  double y = 0;
};

// From fractions of the page as shown, y down, to the page's user space, y up, which does not turn with it.
Point InUserSpace(const FractionPoint& shown, const PageLayout& page) {
  double across = shown.x;
  double up = 1 - shown.y;
  switch (page.turn) {
    case 90:  // clockwise: what was on the left is on top
      across = shown.y;
      up = shown.x;
      break;
    case 180:
      across = 1 - shown.x;
      up = shown.y;
      break;
    case 270:
      across = 1 - shown.y;
      up = 1 - shown.x;
      break;
    default:
      break;
  }
  return {page.left + across * page.width, page.bottom + up * page.height};
}

// A decimal number as a PDF has it: no exponent.
std::string Number(double value) {
  std::array<char, 64> text{};
  const auto end = std::to_chars(text.begin(), text.end(), value, std::chars_format::fixed, 4);
  return {text.begin(), end.ptr};
}

std::string Hex(std::uint32_t value, int digits) {
  constexpr std::string_view kDigits = "0123456789ABCDEF";
  std::string hex;
  for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4)
    hex += kDigits[value >> static_cast<unsigned>(shift) & 15U];
  return hex;
}

// The characters of a UTF-8 text; bytes that are none are left out.
std::u32string Characters(std::string_view text) {
  std::u32string characters;
  for (std::size_t i = 0; i < text.size();) {
    const auto lead = static_cast<unsigned char>(text[i]);
    const std::size_t length = lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 0;
    if (length == 0 || i + length > text.size()) {
      ++i;
      continue;
    }
    char32_t character = length == 1 ? lead : lead & (0x7FU >> length);
    for (std::size_t k = 1; k < length; ++k) {
      character = character << 6U | (static_cast<unsigned char>(text[i + k]) & 0x3FU);
    }
    characters += character;
    i += length;
  }
  return characters;
}

// UTF-16, as ToUnicode streams have it.
std::string Utf16Hex(char32_t character) {
  if (character < 0x10000) return Hex(character, 4);
  const std::uint32_t rest = character - 0x10000;
  return Hex(0xD800 + (rest >> 10U), 4) + Hex(0xDC00 + (rest & 0x3FFU), 4);
}

}  // namespace

LaidCharacters::Code LaidCharacters::CodeOf(char32_t character) {
  const auto [place, is_new] = places_.try_emplace(character, static_cast<int>(characters_.size()));
  if (is_new) characters_.push_back(character);
  return {place->second / kPerFont, static_cast<unsigned char>(place->second % kPerFont + 1)};
}

std::string LaidCharacters::ToUnicode(int font) const {
  const std::size_t first = static_cast<std::size_t>(font) * kPerFont;
  const std::size_t last = std::min(characters_.size(), first + kPerFont);
  std::string map =
      "/CIDInit /ProcSet findresource begin 12 dict begin begincmap\n"
      "/CMapName /Laid def /CMapType 2 def\n"
      "1 begincodespacerange <00> <FF> endcodespacerange\n";
  constexpr std::size_t kMostInBlock = 100;  // ISO 32000-1, 9.10.3 by way of Adobe's Technical Note 5014
  for (std::size_t from = first; from < last; from += kMostInBlock) {
    const std::size_t to = std::min(last, from + kMostInBlock);
    map += std::to_string(to - from) + " beginbfchar\n";
    for (std::size_t i = from; i < to; ++i) {
      map += "<" + Hex(static_cast<std::uint32_t>(i - first + 1), 2) + "> <" + Utf16Hex(characters_[i]) + ">\n";
    }
    map += "endbfchar\n";
  }
  return map + "endcmap CMapName currentdict /CMap defineresource pop end end\n";
}

std::string LaidCharacters::Differences(int font) const {
  const std::size_t first = static_cast<std::size_t>(font) * kPerFont;
  const std::size_t last = std::min(characters_.size(), first + kPerFont);
  std::string names = "1";
  for (std::size_t i = first; i < last; ++i) {
    // Glyph names as the Adobe Glyph List Specification forms them for any character.
    names += characters_[i] < 0x10000 ? " /uni" + Hex(characters_[i], 4) : " /u" + Hex(characters_[i], 6);
  }
  return names;
}

std::string LayWords(const std::vector<LaidWord>& words, const PageLayout& page, const std::string& font_prefix,
                     LaidCharacters& characters) {
  std::string content = "q BT 3 Tr\n";
  int font_set = -1;
  for (const LaidWord& word : words) {
    const std::u32string text = Characters(word.text);
    if (text.empty()) continue;
    const Point start = InUserSpace(word.start, page);
    const Point end = InUserSpace(word.end, page);
    const Point above = InUserSpace(word.above, page);
    // One unit of text is as wide as one size of the font; the font's letters are one size high.
    const double units = static_cast<double>(text.size()) * LaidCharacters::kWidth / 1000.0;
    const double along_x = (end.x - start.x) / units;
    const double along_y = (end.y - start.y) / units;
    const double up_x = above.x - start.x;
    const double up_y = above.y - start.y;
    // Readers give up on a matrix without area.
    constexpr double kLeastArea = 1e-4;
    if (std::abs(along_x * up_y - along_y * up_x) < kLeastArea) continue;
    content += Number(along_x) + " " + Number(along_y) + " " + Number(up_x) + " " + Number(up_y) + " " +
               Number(start.x) + " " + Number(start.y) + " Tm\n";
    std::string codes;
    int font_of_codes = -1;
    const auto show = [&] {
      if (codes.empty()) return;
      if (font_set != font_of_codes) content += "/" + font_prefix + std::to_string(font_of_codes) + " 1 Tf ";
      font_set = font_of_codes;
      content += "<" + codes + "> Tj\n";
      codes.clear();
    };
    for (const char32_t character : text) {
      const LaidCharacters::Code code = characters.CodeOf(character);
      if (code.font != font_of_codes) show();
      font_of_codes = code.font;
      codes += Hex(code.code, 2);
    }
    show();
  }
  return content + "ET Q\n";
}

}  // namespace benchleaf
