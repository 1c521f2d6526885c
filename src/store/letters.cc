#include "store/letters.h"

#include <xapian.h>

#include <algorithm>
#include <utility>

namespace benchleaf::store {

std::u32string Lowered(const std::string& text) {
  std::u32string letters;
  for (Xapian::Utf8Iterator at(text); at != Xapian::Utf8Iterator(); ++at) {
    letters += static_cast<char32_t>(Xapian::Unicode::tolower(*at));
  }
  return letters;
}

std::vector<std::u32string> WordsOf(const std::u32string& text) {
  std::vector<std::u32string> words(1);
  for (const char32_t letter : text) {
    if (!Xapian::Unicode::is_whitespace(letter)) {
      words.back() += letter;
    } else if (!words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

std::size_t EditDistance(std::u32string_view a, std::u32string_view b, std::size_t most) {
  if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) > most) return most + 1;
  // Rows of the table of distances between beginnings of `a` and of `b`: two rows back, one row back, this one.
  std::vector<std::size_t> older(b.size() + 1);
  std::vector<std::size_t> old(b.size() + 1);
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::swap(older, old);
    std::swap(old, row);
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] = std::min({old[j] + 1, row[j - 1] + 1, old[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[j] = std::min(row[j], older[j - 2] + 1);
    }
    if (*std::min_element(row.begin(), row.end()) > most && *std::min_element(old.begin(), old.end()) > most) {
      return most + 1;
    }
  }
  return std::min(row.back(), most + 1);
}

}  // namespace benchleaf::store
