// A short digest that notices differences; it does not withstand an attack.

#ifndef BENCHLEAF_CORE_FNV_H_
#define BENCHLEAF_CORE_FNV_H_

#include "benchleaf/core/result.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace benchleaf {

// FNV-1a, 64 bits (Fowler, Noll and Vo; draft-eastlake-fnv).
class Fnv {
 public:
  void Add(std::string_view bytes);
  // Bytes and then their number, so that none can wander unnoticed from one name or file to the next.
  void AddWhole(std::string_view bytes);
  // A file's content, as AddWhole. Fails with kIo when it cannot be read.
  Result<void> AddFile(const std::filesystem::path& path);

  // 16 hexadecimal digits, lower case.
  std::string Hex() const;

 private:
  void AddSize(std::uint64_t size);
  std::uint64_t hash_ = 0xcbf29ce484222325U;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_FNV_H_
