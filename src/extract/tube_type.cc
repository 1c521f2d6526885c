#include "extract/tube_type.h"

#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kLongest = 16;

bool StartsWith(std::string_view text, std::string_view start) { return text.substr(0, start.size()) == start; }

std::size_t CountFront(std::string_view text, bool (*is)(char)) {
  std::size_t count = 0;
  while (count < text.size() && is(text[count])) {
    ++count;
  }
  return count;
}

constexpr bool IsDigitChar(char c) { return IsDigit(c); }
constexpr bool IsUpperChar(char c) { return IsUpper(c); }

// The parts of a type that begins with its heater voltage or screen size.
struct NumberFirst {
  std::string_view number;
  std::string_view letters;
  std::string_view elements;
  std::string_view suffix;
};

std::optional<NumberFirst> SplitNumberFirst(std::string_view text) {
  NumberFirst parts;
  parts.number = text.substr(0, CountFront(text, IsDigitChar));
  text.remove_prefix(parts.number.size());
  parts.letters = text.substr(0, CountFront(text, IsUpperChar));
  text.remove_prefix(parts.letters.size());
  parts.elements = text.substr(0, CountFront(text, IsDigitChar));
  text.remove_prefix(parts.elements.size());
  parts.suffix = text;
  if (parts.number.empty() || parts.letters.empty() || parts.elements.empty()) {
    return std::nullopt;
  }
  return parts;
}

// Suffixes of receiving types: bulb and base (G, GT, GT/G, M, X, Y, L), ruggedness (W), revisions (A to F).
bool IsReceivingSuffix(std::string_view suffix) {
  if (StartsWith(suffix, "W")) {
    suffix.remove_prefix(1);
  }
  constexpr std::array<std::string_view, 7> kBulbs = {"GT/G", "GTX", "GTY", "GT", "G", "MG", "M"};
  for (const std::string_view bulb : kBulbs) {
    if (StartsWith(suffix, bulb)) {
      suffix.remove_prefix(bulb.size());
      break;
    }
  }
  if (!suffix.empty() && suffix.find_first_not_of("ABCDEFWXYL") == std::string_view::npos && suffix.size() <= 2) {
    return true;
  }
  return suffix.empty();
}

// RETMA/EIA (RETMA standard ET-109-A, from memory): the figure is the heater voltage in whole volts, the letters I and
// O are left out, the last figure counts the elements that have a base pin.
bool HasReceivingForm(const NumberFirst& parts) {
  const bool heater =
      parts.number == "117" || (parts.number.size() <= 2 && (parts.number == "0" || parts.number[0] != '0'));
  const bool elements = parts.elements.size() == 1
                            ? parts.elements[0] != '0'
                            : parts.elements.size() == 2 && parts.elements[0] == '1' && parts.elements[1] <= '4';
  const bool letters = parts.letters.size() <= 2 && parts.letters.find_first_of("IO") == std::string_view::npos;
  return heater && elements && letters && IsReceivingSuffix(parts.suffix);
}

// JEDEC/EIA cathode-ray tubes (JEDEC publication JEP 16, from memory): screen size in inches, one to three letters, P
// and the phosphor.
bool HasScreenForm(const NumberFirst& parts) {
  constexpr std::array<std::string_view, 16> kPhosphors = {"1",  "2",  "3",  "4",  "5",  "6",  "7",  "11",
                                                           "12", "14", "15", "16", "19", "22", "31", "39"};
  return parts.number.size() <= 2 && parts.number[0] != '0' && parts.letters.size() >= 2 && parts.letters.size() <= 4 &&
         parts.letters.back() == 'P' &&
         std::find(kPhosphors.begin(), kPhosphors.end(), parts.elements) != kPhosphors.end() &&
         parts.suffix.size() <= 1 && (parts.suffix.empty() || (parts.suffix[0] >= 'A' && parts.suffix[0] <= 'F'));
}

// Pro Electron: heater letter, two or three letters for the systems, number; two-letter types are few and are known.
bool HasEuropeanForm(std::string_view text) {
  const std::size_t letters = CountFront(text, IsUpperChar);
  const std::size_t figures = CountFront(text.substr(letters), IsDigitChar);
  if (letters < 3 || letters > 4 || figures < 2 || figures > 4 || letters + figures != text.size()) {
    return false;
  }
  constexpr std::string_view kHeaters = "DEGHKLPUXY";
  constexpr std::string_view kSystems = "ABCDEFHKLMPQYZ";
  return kHeaters.find(text[0]) != std::string_view::npos &&
         text.substr(1, letters - 1).find_first_not_of(kSystems) == std::string_view::npos;
}

std::string WithoutDashes(std::string_view text) {
  std::string compact(text);
  compact.erase(std::remove(compact.begin(), compact.end(), '-'), compact.end());
  return compact;
}

bool IsKnown(const std::string& type, const Rules::Tables& tables) {
  return tables.tube_types.count(type) != 0 || tables.tube_bases.count(type) != 0;
}

// A bare number, perhaps with a suffix.
std::optional<TubeType> Number(const std::string& text, const Rules::Tables& tables, TubeContext context) {
  const std::size_t figures = CountFront(text, IsDigitChar);
  if (figures < 2 || figures > 4 || !IsReceivingSuffix(std::string_view(text).substr(figures))) {
    return std::nullopt;
  }
  const bool suffixed = figures != text.size();
  const bool known =
      tables.number_tubes.count(text) != 0 || (figures == 4 && tables.number_tubes.count(text.substr(0, 4)) != 0);
  if (context == TubeContext::kTube && known) {
    return TubeType{text, 0.9, true};
  }
  if (context == TubeContext::kTube && figures == 4 && text[0] >= '5') {
    return TubeType{text, 0.6, false};
  }
  if (known && suffixed && figures == 4) {
    return TubeType{text, 0.8, true};
  }
  return std::nullopt;
}

// Service numbers: VT and CV, and the letters that stood in front of early numbers (UX-245).
std::optional<TubeType> Service(std::string_view text, TubeContext context) {
  constexpr std::array<std::string_view, 6> kFronts = {"VT", "CV", "UX", "UY", "UV", "CX"};
  for (const std::string_view front : kFronts) {
    if (!StartsWith(text, front)) {
      continue;
    }
    std::string_view rest = text.substr(front.size());
    const bool dash = StartsWith(rest, "-");
    rest.remove_prefix(dash ? 1 : 0);
    const std::size_t figures = CountFront(rest, IsDigitChar);
    const std::string_view suffix = rest.substr(figures);
    if (figures < 2 || figures > 4 || suffix.size() > 1 || (!suffix.empty() && !IsUpper(suffix[0])) ||
        (figures == 4 && front != "CV")) {
      return std::nullopt;
    }
    // VT12 without a dash may as well be a designator.
    const bool sure = dash || front == "CV" || context == TubeContext::kTube;
    if (!sure) {
      return std::nullopt;
    }
    std::string type(front);
    type.append(rest);
    return TubeType{type, 0.8, false};
  }
  return std::nullopt;
}

std::optional<TubeType> Strict(const std::string& text, const Rules::Tables& tables, TubeContext context) {
  if (tables.tube_types.count(text) != 0) {
    return TubeType{text, 1, true};
  }
  if (auto service = Service(text, context)) {
    return service;
  }
  const std::string compact = WithoutDashes(text);
  if (auto number = Number(compact, tables, context)) {
    return number;
  }
  const double dashed = compact.size() == text.size() ? 1 : 0.9;
  if (compact.size() < text.size() && compact.size() + 1 < text.size()) {
    return std::nullopt;  // two dashes make a part number
  }
  // OA2 is printed as often as 0A2.
  std::string type = compact;
  if (type[0] == 'O') {
    type[0] = '0';
    type = IsKnown(type, tables) ? type : compact;
  }
  const auto parts = SplitNumberFirst(type);
  if (parts && (HasReceivingForm(*parts) || HasScreenForm(*parts))) {
    if (IsKnown(type, tables) || IsKnown(TubeBase(type), tables)) {
      return TubeType{type, 0.97 * dashed, true};
    }
    if (dashed < 1) {
      return std::nullopt;
    }
    if (HasScreenForm(*parts)) {
      return TubeType{type, 0.75, false};
    }
    // Types with one letter are few and are known; an unknown one is a pin or a relay's contact.
    const double sure = context == TubeContext::kTube ? 0.8 : parts->letters.size() == 2 ? 0.55 : 0;
    return sure > 0 ? std::optional(TubeType{type, sure, false}) : std::nullopt;
  }
  if (IsKnown(type, tables) || (type.size() > 3 && !IsDigit(type[0]) && IsKnown(TubeBase(type), tables))) {
    return TubeType{type, 0.95 * dashed, true};
  }
  if (dashed == 1 && HasEuropeanForm(type)) {
    return TubeType{type, 0.6, false};
  }
  return std::nullopt;
}

// The one known type that the text looks like.
std::optional<TubeType> LookingLike(const std::string& text, const Rules::Tables& tables) {
  constexpr std::size_t kMostChanges = 2;
  const std::string compact = WithoutDashes(text);
  const auto found = tables.folded_tubes.find(Folded(compact, tables));
  if (found == tables.folded_tubes.end() || found->second.empty() || found->second.size() != compact.size() ||
      compact.size() < 4) {
    return std::nullopt;
  }
  const std::string& type = found->second;
  std::size_t changes = 0;
  bool letter = false;
  bool figure = false;
  for (std::size_t i = 0; i < type.size(); ++i) {
    changes += type[i] != compact[i] ? 1U : 0U;
    letter = letter || (type[i] == compact[i] && IsUpper(type[i]));
    figure = figure || (type[i] == compact[i] && IsDigit(type[i]));
  }
  if (!letter || !figure || changes > kMostChanges) {
    return std::nullopt;
  }
  return TubeType{type, changes == 1 ? 0.7 : 0.5, true};
}

// Without what may stand in front of a type: a section's share ("1/2-", read also as "%"), JAN.
std::string_view WithoutFront(std::string_view text) {
  constexpr std::array<std::string_view, 7> kFronts = {"(1/2)", "1/2", "I/2", "'/2", "%", "JAN-", "JAN"};
  for (const std::string_view front : kFronts) {
    if (StartsWith(text, front) && text.size() > front.size() + 1) {
      text.remove_prefix(front.size());
      text.remove_prefix(StartsWith(text, "-") ? 1 : 0);
    }
  }
  return text;
}

}  // namespace

std::optional<TubeType> ParseTubeType(std::string_view plain, const Rules::Tables& tables, TubeContext context) {
  if (plain.size() < 2 || plain.size() > kLongest) {
    return std::nullopt;
  }
  const std::string upper = Upper(plain);
  const std::string text(WithoutFront(upper));
  if (auto whole = Strict(text, tables, context)) {
    return whole;
  }
  const std::size_t slash = text.find('/');
  if (slash != std::string::npos && slash > 2 && slash + 3 < text.size()) {
    const auto first = ParseTubeType(text.substr(0, slash), tables, context);
    const auto second = ParseTubeType(text.substr(slash + 1), tables, context);
    // Two names only count when one of them is sure: C1/R5 is no tube.
    if (first && second && (first->known || second->known)) {
      std::string both = first->type;
      both.append("/").append(second->type);
      return TubeType{both, std::min(first->sure, second->sure), true};
    }
    return std::nullopt;
  }
  return LookingLike(text, tables);
}

std::string TubeBase(std::string_view type) {
  std::size_t end = type.size();
  while (end > 0 && IsUpper(type[end - 1])) {
    --end;
  }
  if (end > 2 && end < type.size() && type[end - 1] == '/') {
    return TubeBase(type.substr(0, end - 1));  // 6J5GT/G
  }
  // E88CC has its systems behind the number.
  const bool letters_behind =
      end > 1 && IsUpper(type[0]) && IsDigit(type[1]) && type.find('-') == std::string_view::npos;
  return std::string(end < 2 || letters_behind ? type : type.substr(0, end));
}

}  // namespace benchleaf::extract
