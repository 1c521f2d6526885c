#include "benchleaf/core/fnv.h"

#include <array>
#include <charconv>
#include <cstddef>

namespace benchleaf {

void Fnv::Add(std::string_view bytes) {
  for (const char byte : bytes) {
    hash_ = (hash_ ^ static_cast<std::uint8_t>(byte)) * 0x100000001b3U;
  }
}

std::string Fnv::Hex() const {
  constexpr int kBase = 16;
  std::array<char, 16> digits{};
  const auto end = std::to_chars(digits.begin(), digits.end(), hash_, kBase).ptr;
  return std::string(static_cast<std::size_t>(digits.end() - end), '0').append(digits.begin(), end);
}

}  // namespace benchleaf
