#include "library/natural_order.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf {
namespace {

bool IsDigit(char c) { return c >= '0' && c <= '9'; }

char Lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// The run of digits at `at`, without leading zeros; moves `at` behind it.
std::string_view TakeNumber(std::string_view text, std::size_t& at) {
  const std::size_t begin = at;
  while (at < text.size() && IsDigit(text[at])) {
    ++at;
  }
  std::string_view digits = text.substr(begin, at - begin);
  digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
  return digits;
}

int Rank(char c) { return c == '/' ? -1 : static_cast<int>(static_cast<unsigned char>(Lower(c))); }

}  // namespace

bool NaturalLess(std::string_view a, std::string_view b) {
  std::size_t i = 0;
  std::size_t j = 0;
  while (i < a.size() && j < b.size()) {
    if (IsDigit(a[i]) && IsDigit(b[j])) {
      const std::string_view left = TakeNumber(a, i);
      const std::string_view right = TakeNumber(b, j);
      if (left.size() != right.size()) {
        return left.size() < right.size();
      }
      if (left != right) {
        return left < right;
      }
      continue;
    }
    if (Rank(a[i]) != Rank(b[j])) {
      return Rank(a[i]) < Rank(b[j]);
    }
    ++i;
    ++j;
  }
  const bool a_ended = i == a.size();
  const bool b_ended = j == b.size();
  if (a_ended != b_ended) {
    return a_ended;
  }
  return a < b;
}

std::string LowerAscii(std::string_view text) {
  std::string lower(text);
  std::transform(lower.begin(), lower.end(), lower.begin(), Lower);
  return lower;
}

}  // namespace benchleaf
