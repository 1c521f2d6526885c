#include "extract/designator_range.h"

#include "extract/list_words.h"
#include "extract/plain_text.h"
#include "extract/value.h"

#include <algorithm>
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

// C4-8-11 is no range: commas that lost their tails.
bool HasRunOfDashes(const std::vector<Item>& items) {
  const auto dashes = [](const Item& a, const Item& b) { return a.joint == '-' && b.joint == '-'; };
  return std::adjacent_find(items.begin(), items.end(), dashes) != items.end();
}

// A stroke or ring for the first figure, figures behind it.
bool BeginsWithStroke(const std::string& item) {
  constexpr std::string_view kStrokes = "iIloO";
  return item.size() > 1 && kStrokes.find(item.front()) != std::string_view::npos &&
         item.find_first_not_of("0123456789", 1) == std::string::npos;
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
  if (!IsDigit(item.front()) && !BeginsWithStroke(item)) {
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
    designators.back().between = number < last;
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
  const bool dashes_for_commas = style == RangeStyle::kList && HasRunOfDashes(*items);
  for (const Item& item : *items) {
    const Designator* before = designators.empty() ? previous : &designators.back();
    // Behind C2 an "i4" is 14 rather than a part of another class.
    const bool stroke = before != nullptr && before->letters != "I" && BeginsWithStroke(item.text);
    auto whole = stroke ? Inherited(item.text, item.joint, *before, tables) : std::nullopt;
    bool inherited = whole.has_value();
    whole = whole ? whole : RepairDesignator(item.text, tables, lone_strokes);
    if (!whole && before != nullptr) {
      whole = Inherited(item.text, item.joint, *before, tables);
      inherited = true;
    }
    if (!whole) {
      return std::nullopt;
    }
    if (designators.empty() || item.joint != '-' || dashes_for_commas) {
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
