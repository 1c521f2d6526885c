#include "orders/plain_words.h"

#include "benchleaf/core/ascii.h"

namespace benchleaf::orders {

std::vector<std::string> PlainWords(std::string_view text) {
  std::vector<std::string> words(1);
  for (const char c : text) {
    if (IsAlnum(c)) {
      words.back() += ToUpper(c);
    } else if (!words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

}  // namespace benchleaf::orders
