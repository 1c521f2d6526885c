#include "benchleaf/report/text.h"

#include <utf8proc.h>

#include <algorithm>
#include <cstddef>

namespace benchleaf {
namespace {

constexpr std::string_view kReplacement = "\xEF\xBF\xBD";  // U+FFFD

// One character of a text, or one byte that is none.
struct Glyph {
  utf8proc_int32_t code = -1;  // -1 for a byte that is not UTF-8
  std::string_view bytes;
};

Glyph FirstGlyph(std::string_view text) {
  utf8proc_int32_t code = -1;
  const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
  const utf8proc_ssize_t taken = utf8proc_iterate(bytes, static_cast<utf8proc_ssize_t>(text.size()), &code);
  if (taken <= 0) return {-1, text.substr(0, 1)};
  return {code, text.substr(0, static_cast<std::size_t>(taken))};
}

int GlyphWidth(const Glyph& glyph) { return glyph.code < 0 ? 1 : utf8proc_charwidth(glyph.code); }

bool IsObeyed(utf8proc_int32_t code) {
  const utf8proc_category_t category = utf8proc_category(code);
  return category == UTF8PROC_CATEGORY_CC || category == UTF8PROC_CATEGORY_CF || category == UTF8PROC_CATEGORY_CS;
}

bool IsBreak(utf8proc_int32_t code) {
  constexpr utf8proc_int32_t kLineSeparator = 0x2028;
  constexpr utf8proc_int32_t kParagraphSeparator = 0x2029;
  return code == '\t' || code == '\n' || code == '\r' || code == kLineSeparator || code == kParagraphSeparator;
}

// Puts lines together from words, none wider than `width` unless a single character is.
class LineFiller {
 public:
  explicit LineFiller(int width) : width_(width) {}

  void AddWord(std::string_view word) {
    const int word_width = DisplayWidth(word);
    if (!line_.empty() && used_ + 1 + word_width <= width_) {
      line_ += ' ';
      ++used_;
    } else if (!line_.empty()) {
      EndLine();
    }
    while (!word.empty()) {
      const Glyph glyph = FirstGlyph(word);
      const int glyph_width = GlyphWidth(glyph);
      if (used_ > 0 && used_ + glyph_width > width_) EndLine();
      line_ += glyph.bytes;
      used_ += glyph_width;
      word.remove_prefix(glyph.bytes.size());
    }
  }

  std::vector<std::string> Finish() {
    if (!line_.empty() || lines_.empty()) EndLine();
    return std::move(lines_);
  }

 private:
  void EndLine() {
    lines_.push_back(std::move(line_));
    line_.clear();
    used_ = 0;
  }

  int width_;
  int used_ = 0;  // columns of line_
  std::string line_;
  std::vector<std::string> lines_;
};

}  // namespace

std::string CleanText(std::string_view text) {
  std::string clean;
  clean.reserve(text.size());
  while (!text.empty()) {
    const Glyph glyph = FirstGlyph(text);
    if (IsBreak(glyph.code)) {
      clean += ' ';
    } else if (glyph.code < 0 || IsObeyed(glyph.code)) {
      clean += kReplacement;
    } else {
      clean += glyph.bytes;
    }
    text.remove_prefix(glyph.bytes.size());
  }
  return clean;
}

int DisplayWidth(std::string_view utf8) {
  int width = 0;
  while (!utf8.empty()) {
    const Glyph glyph = FirstGlyph(utf8);
    width += GlyphWidth(glyph);
    utf8.remove_prefix(glyph.bytes.size());
  }
  return width;
}

std::vector<std::string> Wrapped(std::string_view utf8, int width) {
  LineFiller filler(width);
  while (!utf8.empty()) {
    const std::size_t space = std::min(utf8.find(' '), utf8.size());
    if (space > 0) filler.AddWord(utf8.substr(0, space));
    utf8.remove_prefix(std::min(space + 1, utf8.size()));
  }
  return filler.Finish();
}

std::string Counted(std::size_t count, std::string_view noun) {
  std::string text = std::to_string(count);
  text += ' ';
  text += noun;
  if (count != 1) text += 's';
  return text;
}

}  // namespace benchleaf
