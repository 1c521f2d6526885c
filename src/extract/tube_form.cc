#include "extract/tube_form.h"

#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace benchleaf::extract {
namespace {

bool StartsWith(std::string_view text, std::string_view start) { return text.substr(0, start.size()) == start; }

}  // namespace

std::size_t FiguresInFront(std::string_view text) {
  return static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), IsDigit) - text.begin());
}

std::size_t CapitalsInFront(std::string_view text) {
  return static_cast<std::size_t>(std::find_if_not(text.begin(), text.end(), IsUpper) - text.begin());
}

std::optional<NumberFirst> SplitNumberFirst(std::string_view text) {
  NumberFirst parts;
  parts.number = text.substr(0, FiguresInFront(text));
  text.remove_prefix(parts.number.size());
  parts.letters = text.substr(0, CapitalsInFront(text));
  text.remove_prefix(parts.letters.size());
  parts.elements = text.substr(0, FiguresInFront(text));
  text.remove_prefix(parts.elements.size());
  parts.suffix = text;
  if (parts.number.empty() || parts.letters.empty() || parts.elements.empty()) {
    return std::nullopt;
  }
  return parts;
}

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

bool HasReceivingForm(const NumberFirst& parts) {
  const bool heater =
      parts.number == "117" || (parts.number.size() <= 2 && (parts.number == "0" || parts.number[0] != '0'));
  const bool elements = parts.elements.size() == 1
                            ? parts.elements[0] != '0'
                            : parts.elements.size() == 2 && parts.elements[0] == '1' && parts.elements[1] <= '4';
  const bool letters = parts.letters.size() <= 2 && parts.letters.find_first_of("IO") == std::string_view::npos;
  return heater && elements && letters && IsReceivingSuffix(parts.suffix);
}

bool HasScreenForm(const NumberFirst& parts) {
  constexpr std::array<std::string_view, 16> kPhosphors = {"1",  "2",  "3",  "4",  "5",  "6",  "7",  "11",
                                                           "12", "14", "15", "16", "19", "22", "31", "39"};
  return parts.number.size() <= 2 && parts.number[0] != '0' && parts.letters.size() >= 2 && parts.letters.size() <= 4 &&
         parts.letters.back() == 'P' &&
         std::find(kPhosphors.begin(), kPhosphors.end(), parts.elements) != kPhosphors.end() &&
         parts.suffix.size() <= 1 && (parts.suffix.empty() || (parts.suffix[0] >= 'A' && parts.suffix[0] <= 'F'));
}

bool HasEuropeanForm(std::string_view text) {
  const std::size_t letters = CapitalsInFront(text);
  const std::size_t figures = FiguresInFront(text.substr(letters));
  if (letters < 3 || letters > 4 || figures < 2 || figures > 4 || letters + figures != text.size()) {
    return false;
  }
  constexpr std::string_view kHeaters = "DEGHKLPUXY";
  constexpr std::string_view kSystems = "ABCDEFHKLMPQYZ";
  return kHeaters.find(text[0]) != std::string_view::npos &&
         text.substr(1, letters - 1).find_first_not_of(kSystems) == std::string_view::npos;
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
