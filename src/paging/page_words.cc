#include "paging/page_words.h"

#include "extract/list_heading.h"
#include "extract/list_words.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace benchleaf::paging {
namespace {

constexpr double kLargerBy = 1.35;  // of the page's capital height: lettering of titles
constexpr double kTopShare = 0.16;  // of the page's height

int MiddleHeight(const extract::Line& line) {
  std::vector<int> heights;
  for (const extract::Piece& piece : line.pieces) {
    heights.push_back(piece.turn % 180 == 0 ? piece.box.height : piece.box.width);
  }
  const auto middle = heights.begin() + static_cast<std::ptrdiff_t>(heights.size() / 2);
  std::nth_element(heights.begin(), middle, heights.end());
  return *middle;
}

bool HasWord(const std::vector<std::string>& words) {
  return std::any_of(words.begin(), words.end(), [](const std::string& word) {
    return word.size() >= 4 && std::all_of(word.begin(), word.end(), extract::IsLetter);
  });
}

}  // namespace

bool IsCaption(const std::vector<std::string>& words, const Rules::Tables& tables) {
  return words.size() > 1 && extract::HasRole(words[0], extract::ListRole::kFigure, tables) &&
         words[1].find_first_of("0123456789IVX") != std::string::npos;
}

std::vector<WordLine> WordLines(const PageReading& reading, const Rules::Tables& tables) {
  std::vector<extract::Piece> upright;
  std::vector<extract::Line> lines;
  for (extract::Piece& piece : extract::PiecesOf(reading)) {
    if (piece.turn == 0) {
      upright.push_back(std::move(piece));
    } else {
      const Box box = piece.box;
      lines.emplace_back();
      lines.back().pieces.push_back(std::move(piece));
      lines.back().box = box;
    }
  }
  std::vector<extract::Line> joined = extract::JoinLines(std::move(upright));
  lines.insert(lines.begin(), std::make_move_iterator(joined.begin()), std::make_move_iterator(joined.end()));

  const double cap = extract::CapHeight(reading);
  std::vector<WordLine> result;
  result.reserve(lines.size());
  for (extract::Line& line : lines) {
    WordLine word_line;
    word_line.words = extract::WordsOf(line.pieces);
    const bool larger = MiddleHeight(line) > kLargerBy * cap && HasWord(word_line.words);
    const bool top = line.box.bottom() < kTopShare * reading.frame.level_height && line.pieces.size() <= 8;
    word_line.title = larger || top || (IsCaption(word_line.words, tables) && line.pieces.size() <= 12);
    word_line.line = std::move(line);
    result.push_back(std::move(word_line));
  }
  return result;
}

}  // namespace benchleaf::paging
