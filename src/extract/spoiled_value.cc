#include "extract/spoiled_value.h"

#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>
#include <numeric>
#include <string>

namespace benchleaf::extract {
namespace {

// What a letter among figures was printed as; nought for letters that look like no figure.
char FigureLike(char c) {
  switch (c) {
    case 'O':
    case 'Q':
    case 'D':
      return '0';
    case 'I':
    case 'L':
      return '1';
    case 'Z':
      return '2';
    case 'S':
      return '5';
    case 'B':
      return '8';
    default:
      return '\0';
  }
}

std::string AsFigures(std::string_view text) {
  std::string figures(text);
  for (char& c : figures) {
    c = FigureLike(c) == '\0' ? c : FigureLike(c);
  }
  return figures;
}

// The units that lists spell out, so that one wrong letter leaves them known.
std::string_view UnitLike(std::string_view text) {
  constexpr std::array<std::string_view, 10> kUnits = {"MMFD", "UUFD", "MFD", "MMF",  "UUF",
                                                       "UFD",  "OHMS", "OHM", "MEGS", "MEG"};
  for (const std::string_view unit : kUnits) {
    if (unit.size() == text.size() &&
        std::inner_product(unit.begin(), unit.end(), text.begin(), 0, std::plus<>(), std::not_equal_to<>()) <= 1) {
      return unit;
    }
  }
  return {};
}

}  // namespace

std::optional<Value> ParseSpoiledValue(std::string_view plain, Quantity quantity) {
  const std::string text = Upper(plain);
  for (std::size_t at = 1; at < text.size(); ++at) {
    const std::string number = text.substr(0, at);
    const std::string unit = text.substr(at);
    // "o1" may be .1 or .01: no number begins with a nought.
    const bool lost_dot = !IsDigit(number.front()) && FigureLike(number.front()) == '0';
    if (lost_dot || std::none_of(number.begin(), number.end(), IsDigit) || !IsValueNumber(AsFigures(number))) {
      continue;
    }
    const std::string meant = IsValueUnit(unit) ? unit : std::string(UnitLike(unit));
    auto value = meant.empty() ? std::nullopt : ParseValue(AsFigures(number) + meant);
    if (value && value->quantity == quantity) {
      return value;
    }
  }
  return std::nullopt;
}

}  // namespace benchleaf::extract
