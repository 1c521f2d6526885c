#include "extract/tube_type.h"

#include "extract/plain_text.h"
#include "extract/tube_form.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kLongest = 24;

bool StartsWith(std::string_view text, std::string_view start) { return text.substr(0, start.size()) == start; }

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
  const std::size_t figures = FiguresInFront(text);
  if (figures < 2 || figures > 4 || !IsReceivingSuffix(std::string_view(text).substr(figures))) {
    return std::nullopt;
  }
  const bool suffixed = figures != text.size();
  const bool known =
      tables.number_tubes.count(text) != 0 || (figures == 4 && tables.number_tubes.count(text.substr(0, 4)) != 0);
  if (context == TubeContext::kTube && known) {
    return TubeType{text, 0.9, true, false};
  }
  if (context == TubeContext::kTube && figures == 4 && text[0] >= '5') {
    return TubeType{text, 0.6, false, false};
  }
  if (known && suffixed && figures == 4) {
    return TubeType{text, 0.8, true, false};
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
    const std::size_t figures = FiguresInFront(rest);
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
    return TubeType{type, 0.8, false, false};
  }
  return std::nullopt;
}

std::optional<TubeType> Strict(const std::string& text, const Rules::Tables& tables, TubeContext context) {
  if (tables.tube_types.count(text) != 0) {
    return TubeType{text, 1, true, false};
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
      return TubeType{type, 0.97 * dashed, true, false};
    }
    if (dashed < 1) {
      return std::nullopt;
    }
    if (HasScreenForm(*parts)) {
      return TubeType{type, 0.75, false, false};
    }
    // Types with one letter are few and are known; an unknown one is a pin or a relay's contact.
    const double sure = context == TubeContext::kTube ? 0.8 : parts->letters.size() == 2 ? 0.55 : 0;
    return sure > 0 ? std::optional(TubeType{type, sure, false, false}) : std::nullopt;
  }
  if (IsKnown(type, tables) || (type.size() > 3 && !IsDigit(type[0]) && IsKnown(TubeBase(type), tables))) {
    return TubeType{type, 0.95 * dashed, true, false};
  }
  if (dashed == 1 && HasEuropeanForm(type)) {
    return TubeType{type, 0.6, false, false};
  }
  return std::nullopt;
}

// Without the share of a tube that one section is: "1/2-", "(1/2)", in many readings of the fraction.
std::string_view WithoutShare(std::string_view text) {
  constexpr std::string_view kStrokes = "1IL'!|T";
  const std::size_t bracket = StartsWith(text, "(") ? 1 : 0;
  const std::size_t end = bracket + 3;
  const bool fraction = text.size() > end && kStrokes.find(text[bracket]) != std::string_view::npos &&
                        text[bracket + 1] == '/' && text[bracket + 2] >= '2' && text[bracket + 2] <= '4';
  if (fraction && (bracket == 0 || text[end] == ')')) {
    text.remove_prefix(end + bracket);
  } else if (StartsWith(text, "%")) {  // as one character, it is read so
    text.remove_prefix(1);
  } else {
    return text;
  }
  text.remove_prefix(StartsWith(text, "-") ? 1 : 0);
  return text;
}

// Without JAN, and the three letters of the manufacturer that may follow it (JAN-1A, from memory): JAN-CXX-6AU6WA.
std::string_view WithoutServiceMark(std::string_view text) {
  constexpr std::string_view kMark = "JAN";
  if (!StartsWith(text, kMark) || text.size() < kMark.size() + 2) {
    return text;
  }
  text.remove_prefix(kMark.size());
  text.remove_prefix(StartsWith(text, "-") ? 1 : 0);
  if (text.size() > 5 && text[0] == 'C' && CapitalsInFront(text) == 3 && text[3] == '-') {
    text.remove_prefix(4);
  }
  return text;
}

std::string_view WithoutFront(std::string_view text) {
  const std::string_view rest = WithoutServiceMark(WithoutShare(text));
  return rest.size() < 2 ? text : rest;
}

// Several names of one tube, with slashes between them. They count when one of them is sure, and then it speaks for
// the others (6L6GC/7581): C1/R5 is no tube.
std::optional<TubeType> SeveralNames(const std::string& text, const Rules::Tables& tables, TubeContext context) {
  const std::size_t slash = text.find('/');
  if (slash < 2 || slash + 3 > text.size()) {
    return std::nullopt;
  }
  const std::string front = text.substr(0, slash);
  const std::string behind = text.substr(slash + 1);
  auto first = ParseTubeType(front, tables, context);
  auto second = ParseTubeType(behind, tables, first && first->known ? TubeContext::kTube : context);
  if (!first && second && second->known) {
    first = ParseTubeType(front, tables, TubeContext::kTube);
  }
  if (!first || !second || !(first->known || second->known)) {
    return std::nullopt;
  }
  return TubeType{first->type + "/" + second->type, std::min(first->sure, second->sure), true,
                  first->repaired || second->repaired};
}

}  // namespace

std::optional<TubeType> ParseTubeType(std::string_view plain, const Rules::Tables& tables, TubeContext context) {
  if (plain.size() < 2 || plain.size() > kLongest) {
    return std::nullopt;
  }
  // Most words have no figure, and what is no known type is told by its figures.
  if (tables.tubes_have_figures && std::none_of(plain.begin(), plain.end(), IsDigit)) {
    return std::nullopt;
  }
  const std::string upper = Upper(plain);
  const std::string text(WithoutFront(upper));
  auto whole = Strict(text, tables, context);
  if (whole && (whole->known || !IsDigit(text[0]))) {
    return whole;
  }
  if (!whole && text.find('/') != std::string::npos) {
    return SeveralNames(text, tables, context);
  }
  // Nearly all types are known: an unknown one is more often a known one badly read.
  constexpr double kSurelyMeant = 0.85;
  auto alike = TubeTypeLookingLike(WithoutDashes(text), tables, context);
  if (!whole || (alike && alike->sure >= kSurelyMeant)) {
    return alike;
  }
  return whole;
}

}  // namespace benchleaf::extract
