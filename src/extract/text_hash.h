// A hash by which texts are looked up without a string being made of them.

#ifndef BENCHLEAF_SRC_EXTRACT_TEXT_HASH_H_
#define BENCHLEAF_SRC_EXTRACT_TEXT_HASH_H_

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>

namespace benchleaf::extract {

struct TextHash {
  using is_transparent = void;
  std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
};

template <class Value>
using ByText = std::unordered_map<std::string, Value, TextHash, std::equal_to<>>;

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_TEXT_HASH_H_
