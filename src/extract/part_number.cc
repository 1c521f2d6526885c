#include "extract/part_number.h"

#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include <cstddef>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kLongest = 24;

// The capital that a misread figure stands for.
char LetterOfFigure(char figure) {
  switch (figure) {
    case '0':
      return 'O';
    case '1':
      return 'I';
    case '2':
      return 'Z';
    case '5':
      return 'S';
    case '6':
      return 'G';
    case '8':
      return 'B';
    default:
      return 0;
  }
}

}  // namespace

double SureOfPartNumber(std::string_view text, const Rules::Tables& tables, PartPlace place) {
  if (text.size() < 4 || text.size() > kLongest) {
    return 0;
  }
  for (const PartPattern& part : tables.part_patterns) {
    if ((part.anywhere || place == PartPlace::kList) && std::regex_match(text.begin(), text.end(), part.pattern)) {
      return part.sure;
    }
  }
  return 0;
}

std::string ShapeOf(std::string_view text) {
  std::string shape(text);
  for (char& c : shape) {
    c = IsDigit(c) ? '9' : IsLetter(c) ? 'A' : c;
  }
  return shape;
}

std::string FittedToShape(std::string_view text, std::string_view shape, const Rules::Tables& tables) {
  const auto characters = Characters(text);
  if (characters.size() != shape.size()) {
    return {};
  }
  std::string fitted;
  for (std::size_t i = 0; i < shape.size(); ++i) {
    const std::string& character = characters[i];
    const char c = character.size() == 1 ? character.front() : '\0';
    char right = 0;
    if (shape[i] == '9') {
      right = IsDigit(c) ? c : LookAlikeOf(character, tables).digit;
    } else if (shape[i] == 'A') {
      right = IsLetter(c) ? ToUpper(c) : IsDigit(c) ? LetterOfFigure(c) : LookAlikeOf(character, tables).letter;
    } else if (c == shape[i] || (shape[i] == '-' && (c == '_' || c == '~' || c == '=' || c == '.'))) {
      right = shape[i];
    }
    if (right == 0) {
      return {};
    }
    fitted += right;
  }
  return fitted;
}

}  // namespace benchleaf::extract
