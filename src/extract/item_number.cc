#include "extract/item_number.h"

#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <charconv>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kMostFigures = 3;

std::optional<ItemNumber> OfFigures(std::string_view figures) {
  if (figures.empty() || figures.size() > kMostFigures || figures.front() == '0' ||
      !std::all_of(figures.begin(), figures.end(), IsDigit)) {
    return std::nullopt;
  }
  ItemNumber item;
  std::from_chars(figures.data(), figures.data() + figures.size(), item.number);
  return item;
}

}  // namespace

std::string ItemNumber::Text() const {
  std::string text = std::to_string(number);
  if (letter != 0) {
    text += letter;
  }
  return text;
}

std::optional<ItemNumber> ParseItemNumber(std::string_view plain) {
  constexpr std::string_view kLikeFigures = "IOQSZ";  // letters that counting leaves out (common practice, no source)
  const bool lettered =
      !plain.empty() && IsUpper(plain.back()) && kLikeFigures.find(plain.back()) == std::string_view::npos;
  const char letter = lettered ? plain.back() : '\0';
  auto item = OfFigures(letter == 0 ? plain : plain.substr(0, plain.size() - 1));
  if (item) {
    item->letter = letter;
  }
  return item;
}

std::optional<ItemNumber> LikeItemNumber(std::string_view plain, const Rules::Tables& tables) {
  std::string figures;
  for (const std::string_view character : Characters(plain)) {
    const bool figure = character.size() == 1 && IsDigit(character.front());
    const char like = figure ? character.front() : LookAlikeOf(character, tables).digit;
    if (like == 0) {
      return std::nullopt;
    }
    figures += like;
  }
  auto item = OfFigures(figures);
  if (item) {
    item->sure = figures == plain;
  }
  return item;
}

bool IsNextItem(const ItemNumber& number, const ItemNumber& next) {
  const bool next_letter =
      next.number == number.number && next.letter == (number.letter == 0 ? 'A' : number.letter + 1);
  return next_letter || (next.number == number.number + 1 && next.letter == 0);
}

}  // namespace benchleaf::extract
