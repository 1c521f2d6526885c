// Item numbers: what counts the rows of a list without designators, and what its drawing calls out.

#ifndef BENCHLEAF_SRC_EXTRACT_ITEM_NUMBER_H_
#define BENCHLEAF_SRC_EXTRACT_ITEM_NUMBER_H_

#include "extract/rule_tables.h"

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::extract {

// 12, or 12A for what was put in later. By order of counting.
struct ItemNumber {
  int number = 0;    // 1 to 999
  char letter = 0;   // 0: none
  bool sure = true;  // false: look-alikes were taken for figures

  std::string Text() const;
  auto operator<=>(const ItemNumber& other) const {
    return number != other.number ? number <=> other.number : letter <=> other.letter;
  }
  bool operator==(const ItemNumber& other) const { return number == other.number && letter == other.letter; }
};

// What a text that is nothing else spells: "12", "12A"; nothing for other texts. REQUIRES: `plain` is trimmed.
std::optional<ItemNumber> ParseItemNumber(std::string_view plain);

// The figures that it looks like: "l2" is 12, "1O" is 10, and "S2" 52. Nothing where a character looks like no figure.
std::optional<ItemNumber> LikeItemNumber(std::string_view plain, const Rules::Tables& tables);

// Whether `next` is what counting gives behind `number`: 13 or 12A behind 12, 12B or 13 behind 12A.
bool IsNextItem(const ItemNumber& number, const ItemNumber& next);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_ITEM_NUMBER_H_
