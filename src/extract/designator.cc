#include "extract/designator.h"

#include "extract/plain_text.h"

#include <algorithm>
#include <charconv>
#include <cstddef>

namespace benchleaf::extract {
namespace {

constexpr std::ptrdiff_t kMostFigures = 4;

// Sections of a part go by the first letters of the alphabet; later letters are seldom, and those that look like
// figures (I, O, S, Z) are not used.
double SureOfSuffix(char suffix) {
  if (suffix >= 'A' && suffix <= 'D') {
    return 0.95;
  }
  if (suffix >= 'E' && suffix <= 'H') {
    return 0.8;
  }
  constexpr std::string_view kSeldom = "JKLMNPRTUVWXY";
  return kSeldom.find(suffix) != std::string_view::npos ? 0.6 : 0;
}

// The length of "A4" or "A12-" at the front when more letters follow it, else 0.
std::size_t AssemblyPrefix(std::string_view text) {
  if (text.size() < 4 || text[0] != 'A' || !IsDigit(text[1]) || text[1] == '0') {
    return 0;
  }
  std::size_t end = IsDigit(text[2]) ? 3 : 2;
  if (end < text.size() && text[end] == '-') {
    ++end;
  }
  const bool letters_and_number_follow =
      end + 1 < text.size() && IsUpper(text[end]) &&
      std::any_of(text.begin() + static_cast<std::ptrdiff_t>(end), text.end(), IsDigit);
  return letters_and_number_follow ? end : 0;
}

}  // namespace

int NumberOf(const Designator& designator) {
  int number = 0;
  std::from_chars(designator.number.data(), designator.number.data() + designator.number.size(), number);
  return number;
}

bool IsDesignatorClass(std::string_view letters, const Rules::Tables& tables) {
  return tables.designator_classes.find(letters) != tables.designator_classes.end();
}

std::optional<Designator> ParseDesignator(std::string_view text, const Rules::Tables& tables) {
  Designator designator;
  for (std::size_t length = AssemblyPrefix(text); length != 0; length = AssemblyPrefix(text)) {
    const std::string_view prefix = text.substr(0, length);
    designator.assembly += prefix.substr(0, prefix.find('-'));
    text.remove_prefix(length);
  }
  const auto* letters_end = std::find_if_not(text.begin(), text.end(), IsUpper);
  const auto* number_end = std::find_if_not(letters_end, text.end(), IsDigit);
  const auto figures = number_end - letters_end;
  if (figures == 0 || figures > kMostFigures || text.end() - number_end > 1) {
    return std::nullopt;
  }
  const auto known = tables.designator_classes.find(std::string_view(text.begin(), letters_end));
  if (known == tables.designator_classes.end()) {
    return std::nullopt;
  }
  designator.letters.assign(text.begin(), letters_end);
  designator.number.assign(letters_end, number_end);
  designator.suffix.assign(number_end, text.end());
  designator.sure = known->second;
  if (!designator.suffix.empty()) {
    designator.sure *= SureOfSuffix(designator.suffix.front());
  }
  if (designator.number.front() == '0') {
    // Numbers begin at 1; some makers fill up with zeros (R001), but never write R0.
    if (std::all_of(designator.number.begin(), designator.number.end(), [](char c) { return c == '0'; })) {
      return std::nullopt;
    }
    designator.sure *= 0.7;
  }
  if (!designator.assembly.empty()) {
    designator.sure = std::max(designator.sure, 0.9);  // a printed assembly leaves no doubt
  }
  return designator.sure > 0 ? std::optional(designator) : std::nullopt;
}

}  // namespace benchleaf::extract
