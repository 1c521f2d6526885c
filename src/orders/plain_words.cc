#include "orders/plain_words.h"

#include "benchleaf/core/ascii.h"

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <numeric>

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

int EditsBetween(std::string_view a, std::string_view b, int most) {
  if (std::abs(static_cast<int>(a.size()) - static_cast<int>(b.size())) > most) return most + 1;
  std::vector<int> row(b.size() + 1);
  std::iota(row.begin(), row.end(), 0);
  for (std::size_t i = 0; i < a.size(); ++i) {
    int corner = row[0];
    ++row[0];
    for (std::size_t j = 0; j < b.size(); ++j) {
      const int changed = corner + (a[i] == b[j] ? 0 : 1);
      corner = row[j + 1];
      row[j + 1] = std::min({changed, row[j] + 1, row[j + 1] + 1});
    }
  }
  return std::min(row.back(), most + 1);
}

}  // namespace benchleaf::orders
