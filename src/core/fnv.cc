#include "benchleaf/core/fnv.h"

#include <array>
#include <charconv>
#include <cstddef>
#include <fstream>
#include <vector>

namespace benchleaf {

void Fnv::Add(std::string_view bytes) {
  for (const char byte : bytes) {
    hash_ = (hash_ ^ static_cast<std::uint8_t>(byte)) * 0x100000001b3U;
  }
}

void Fnv::AddWhole(std::string_view bytes) {
  Add(bytes);
  AddSize(bytes.size());
}

Result<void> Fnv::AddFile(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::vector<char> chunk(1U << 16U);
  std::uint64_t size = 0;
  while (file.read(chunk.data(), static_cast<std::streamsize>(chunk.size())) || file.gcount() > 0) {
    Add({chunk.data(), static_cast<std::size_t>(file.gcount())});
    size += static_cast<std::uint64_t>(file.gcount());
  }
  if (!file.eof()) {
    return Fail(ErrorCode::kIo, "cannot be read", path.string());
  }
  AddSize(size);
  return {};
}

void Fnv::AddSize(std::uint64_t size) {
  Add("/");
  Add(std::to_string(size));
  Add("/");
}

std::string Fnv::Hex() const {
  constexpr int kBase = 16;
  std::array<char, 16> digits{};
  const auto end = std::to_chars(digits.begin(), digits.end(), hash_, kBase).ptr;
  return std::string(static_cast<std::size_t>(digits.end() - end), '0').append(digits.begin(), end);
}

}  // namespace benchleaf
