#include "paging/printed_number.h"

#include "extract/list_words.h"
#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf::paging {
namespace {

constexpr double kMarginShare = 0.1;  // of the page's height, at head and foot
constexpr double kCellGap = 3;        // capital heights

// The text as a page number, with look-alikes of figures put right; empty when it is none.
std::string AsPageNumber(const std::string& plain, const Rules::Tables& tables) {
  const std::string text = extract::Trimmed(plain);
  std::string number;
  std::size_t figures = 0;
  std::size_t dashes = 0;
  for (const std::string_view character : Characters(text)) {
    if (character == "-") {
      number += '-';
      ++dashes;
    } else if (character.size() == 1 && extract::IsDigit(character[0])) {
      number += character;
      ++figures;
    } else {
      const extract::LookAlike alike = extract::LookAlikeOf(character, tables);
      if (alike.digit == 0 || !alike.sure) {
        return {};
      }
      number += alike.digit;
    }
  }
  const std::size_t dash = number.find('-');
  const std::size_t longest = dash == std::string::npos ? number.size() : std::max(dash, number.size() - dash - 1);
  return figures > 0 && dashes <= 1 && longest <= 3 && number.front() != '0' ? number : std::string();
}

// Only a cell of its own counts: one or two words with free space round them.
std::string NumberInCell(const std::vector<extract::Piece>& pieces, std::size_t from, std::size_t count,
                         const Rules::Tables& tables) {
  if (count == 1) {
    return AsPageNumber(pieces[from].text, tables);
  }
  if (count == 2 && extract::ListWord(pieces[from].text) == "PAGE") {
    return AsPageNumber(pieces[from + 1].text, tables);
  }
  // "- 42 -"
  if (count == 3 && pieces[from].text == "-" && pieces[from + 2].text == "-") {
    return AsPageNumber(pieces[from + 1].text, tables);
  }
  return {};
}

}  // namespace

std::string PrintedNumber(const std::vector<WordLine>& lines, int page_height, double cap,
                          const Rules::Tables& tables) {
  std::string best;
  double best_margin = kMarginShare * page_height;
  for (const WordLine& line : lines) {
    const auto& pieces = line.line.pieces;
    const double margin = std::min<double>(line.line.box.y, page_height - line.line.box.bottom());
    if (margin >= best_margin || pieces.front().turn != 0) {
      continue;
    }
    for (std::size_t from = 0; from < pieces.size();) {
      std::size_t count = 1;
      while (from + count < pieces.size() &&
             extract::Gap(pieces[from + count - 1], pieces[from + count]) < kCellGap * cap) {
        ++count;
      }
      std::string number = NumberInCell(pieces, from, count, tables);
      if (!number.empty()) {
        best = std::move(number);
        best_margin = margin;
      }
      from += count;
    }
  }
  return best;
}

}  // namespace benchleaf::paging
