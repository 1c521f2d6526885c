// What fuzz targets share.

#ifndef BENCHLEAF_TESTS_FUZZ_FUZZ_INPUT_H_
#define BENCHLEAF_TESTS_FUZZ_FUZZ_INPUT_H_

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

inline std::string_view Bytes(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

// A promise that holds for any input.
inline void Promise(bool kept) {
  if (!kept) {
    std::abort();
  }
}

inline std::vector<std::string> Lines(std::string_view text) {
  std::vector<std::string> lines;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    lines.emplace_back(text.substr(0, end));
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
  }
  return lines;
}

}  // namespace benchleaf

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

#endif  // BENCHLEAF_TESTS_FUZZ_FUZZ_INPUT_H_
