#include "extract/part_number.h"

#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <utility>
#include <vector>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kLongest = 24;
constexpr std::string_view kDashes = "-_~=.,:' ";

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

double FreshSureOfPartNumber(std::string_view text, std::size_t figures, const Rules::Tables& tables, PartPlace place) {
  for (const PartPattern& part : tables.part_patterns) {
    if (figures >= part.figures && (part.anywhere || place == PartPlace::kList) &&
        std::regex_match(text.begin(), text.end(), part.pattern)) {
      return part.sure;
    }
  }
  return 0;
}

}  // namespace

double SureOfPartNumber(std::string_view text, const Rules::Tables& tables, PartPlace place) {
  if (text.size() < 4 || text.size() > kLongest) {
    return 0;
  }
  const auto figures = static_cast<std::size_t>(std::count_if(text.begin(), text.end(), IsDigit));
  // Most words have none, and then no pattern need be asked for.
  if (std::none_of(tables.part_patterns.begin(), tables.part_patterns.end(),
                   [&](const PartPattern& part) { return figures >= part.figures; })) {
    return 0;
  }
  const auto fresh = [&] { return FreshSureOfPartNumber(text, figures, tables, place); };
  // The words of a list's row are asked for again and again, others once: TermsIn remembers those.
  return place == PartPlace::kList ? tables.list_numbers_known.Of(text, fresh) : fresh();
}

std::string WithNoughts(std::string_view text) {
  std::string number(text);
  for (std::size_t i = 0; i < number.size(); ++i) {
    const bool beside = (i > 0 && IsDigit(number[i - 1])) || (i + 1 < number.size() && IsDigit(number[i + 1]));
    number[i] = number[i] == 'O' && beside ? '0' : number[i];
  }
  return number;
}

std::size_t LeastFigures(std::string_view pattern) {
  constexpr std::string_view kFigures = "[0-9]";
  std::size_t least = 0;
  std::size_t depth = 0;  // of brackets: what stands in them may be left out
  for (std::size_t at = 0; at < pattern.size(); ++at) {
    const char c = pattern[at];
    if (c == '|' && depth == 0) {
      return 0;
    }
    depth += c == '(' ? 1U : 0U;
    depth -= c == ')' && depth > 0 ? 1U : 0U;
    if (c == '\\') {
      ++at;
    } else if (pattern.substr(at).starts_with(kFigures)) {
      at += kFigures.size() - 1;
      const std::string_view behind = pattern.substr(at + 1);
      std::size_t times = behind.starts_with('?') || behind.starts_with('*') ? 0 : 1;
      if (behind.starts_with('{')) {
        times = 0;
        std::from_chars(behind.data() + 1, behind.data() + behind.size(), times);
      }
      least += depth == 0 ? times : 0;
    } else if (c == '[') {
      const std::size_t end = pattern.find(']', at);
      if (end == std::string_view::npos) {
        return 0;
      }
      at = end;
    }
  }
  return least;
}

std::string ShapeOf(std::string_view text) {
  std::string shape(text);
  for (char& c : shape) {
    c = IsDigit(c) ? '9' : IsLetter(c) ? 'A' : c;
  }
  return shape;
}

std::string FittedToShape(std::string_view text, std::string_view shape, const Rules::Tables& tables) {
  std::vector<std::string_view> characters = Characters(text);
  std::erase_if(characters,
                [](std::string_view character) { return character.find_first_of(kDashes) != std::string_view::npos; });
  const auto signs = static_cast<std::size_t>(
      std::count_if(shape.begin(), shape.end(), [](char c) { return kDashes.find(c) != std::string_view::npos; }));
  const std::size_t wanted = shape.size() - signs;
  const bool stroke = characters.size() == wanted + 1 && LookAlikeOf(characters.front(), tables).fold == '1';
  if (characters.size() != wanted + (stroke ? 1U : 0U)) {
    return {};
  }
  std::string fitted;
  std::size_t at = stroke ? 1 : 0;
  for (const char form : shape) {
    if (kDashes.find(form) != std::string_view::npos) {
      fitted += form;
      continue;
    }
    const std::string_view character = characters[at++];
    const char c = character.size() == 1 ? character.front() : '\0';
    char right = 0;
    if (form == '9') {
      right = IsDigit(c) ? c : LookAlikeOf(character, tables).digit;
    } else if (form == 'A') {
      right = IsLetter(c) ? ToUpper(c) : IsDigit(c) ? LetterOfFigure(c) : LookAlikeOf(character, tables).letter;
    }
    if (right == 0 && c != form) {
      return {};
    }
    fitted += right == 0 ? form : right;
  }
  return fitted;
}

}  // namespace benchleaf::extract
