#include "extract/designator_range.h"

#include "extract/list_words.h"
#include "extract/plain_text.h"
#include "extract/value.h"

#include <algorithm>
#include <charconv>
#include <cstddef>

namespace benchleaf::extract {
namespace {

// A longer range is a misreading, or a part number (C12-1034).
constexpr int kMostInRange = 200;
constexpr double kBetweenOnDrawing = 0.6;

struct Item {
  std::string text;
  char joint = ',';  // what stands in front of it: ',' '-' or '/'
};

// The items and the signs between them; nothing when a sign has nothing beside it.
std::optional<std::vector<Item>> Items(std::string_view text, RangeStyle style) {
  std::vector<Item> items(1);
  for (const char c : text) {
    // In a list a full stop is a comma that lost its tail.
    const bool list = c == ',' || c == '&' || c == '+' || c == ';' || (c == '.' && style == RangeStyle::kList);
    const bool range = c == '-' || c == '~' || c == '=' || c == '_';
    if (list || range || c == '/') {
      if (items.back().text.empty()) {
        return std::nullopt;
      }
      items.push_back({{}, list ? ',' : range ? '-' : '/'});
    } else {
      items.back().text += c;
    }
  }
  if (items.back().text.empty()) {
    return std::nullopt;
  }
  return items;
}

// What an item that is no whole designator means behind `before`: a number takes over the letters, a letter alone
// takes over the number.
std::optional<Designator> Inherited(const std::string& item, char joint, const Designator& before,
                                    const Rules::Tables& tables) {
  if (item.size() == 1 && item.front() >= 'A' && item.front() <= 'H' && !before.suffix.empty()) {
    Designator section = before;
    section.suffix = item;
    return section;
  }
  if (!IsDigit(item.front()) && item.front() != 'l' && item.front() != 'I' && item.front() != 'O') {
    return std::nullopt;
  }
  if (joint == '/' && IsLetter(item.back()) && ParseValue(item)) {
    return std::nullopt;  // R5/47K: a part with its value
  }
  auto taken = RepairDesignator(before.letters + item, tables, LoneStrokes::kRefuse);
  if (taken && taken->letters != before.letters) {
    return std::nullopt;
  }
  if (taken) {
    taken->assembly = before.assembly;
  }
  return taken;
}

int NumberOf(const Designator& designator) {
  int number = 0;
  std::from_chars(designator.number.data(), designator.number.data() + designator.number.size(), number);
  return number;
}

// Adds what lies behind the last designator up to and with `to`. False when the two are no ends of a range.
bool AddRange(const Designator& to, RangeStyle style, std::vector<Designator>& designators) {
  const Designator from = designators.back();
  if (from.letters != to.letters || from.assembly != to.assembly) {
    return false;
  }
  const double between = style == RangeStyle::kList ? 1 : kBetweenOnDrawing;
  if (from.number == to.number && !from.suffix.empty() && !to.suffix.empty() && from.suffix < to.suffix) {
    for (char suffix = static_cast<char>(from.suffix.front() + 1); suffix <= to.suffix.front(); ++suffix) {
      designators.push_back(to);
      designators.back().suffix = std::string(1, suffix);
    }
    return true;
  }
  const int first = NumberOf(from);
  const int last = NumberOf(to);
  if (!from.suffix.empty() || !to.suffix.empty() || last <= first || last - first > kMostInRange) {
    return false;
  }
  for (int number = first + 1; number <= last; ++number) {
    designators.push_back(to);
    designators.back().number = std::to_string(number);
    designators.back().sure = std::min(from.sure, to.sure) * (number < last ? between : 1);
  }
  return true;
}

}  // namespace

std::optional<std::vector<Designator>> ExpandDesignators(std::string_view plain, const Rules::Tables& tables,
                                                         RangeStyle style, const Designator* previous,
                                                         LoneStrokes lone_strokes) {
  if (plain.size() > 120) {
    return std::nullopt;
  }
  const auto items = Items(WithSignsForWords(plain, tables), style);
  if (!items) {
    return std::nullopt;
  }
  std::vector<Designator> designators;
  for (const Item& item : *items) {
    const Designator* before = designators.empty() ? previous : &designators.back();
    auto whole = RepairDesignator(item.text, tables, lone_strokes);
    const bool inherited = !whole;
    if (!whole && before != nullptr) {
      whole = Inherited(item.text, item.joint, *before, tables);
    }
    if (!whole) {
      return std::nullopt;
    }
    if (designators.empty() || item.joint != '-') {
      designators.push_back(*whole);
      continue;
    }
    if (style == RangeStyle::kDrawing && inherited) {
      continue;  // the pin of a connector or tube: J1-4
    }
    // A range may give the end only by its number, without the assembly in front of it.
    if (whole->assembly.empty()) {
      whole->assembly = designators.back().assembly;
    }
    if (!AddRange(*whole, style, designators)) {
      if (style == RangeStyle::kList) {
        return std::nullopt;
      }
      designators.push_back(*whole);  // two ends of a wire: J1-P1
    }
  }
  return designators;
}

}  // namespace benchleaf::extract
