// A short digest that notices differences; it does not withstand an attack.

#ifndef BENCHLEAF_CORE_FNV_H_
#define BENCHLEAF_CORE_FNV_H_

#include <cstdint>
#include <string>
#include <string_view>

namespace benchleaf {

// FNV-1a, 64 bits (Fowler, Noll and Vo; draft-eastlake-fnv).
class Fnv {
 public:
  void Add(std::string_view bytes);

  // 16 hexadecimal digits, lower case.
  std::string Hex() const;

 private:
  std::uint64_t hash_ = 0xcbf29ce484222325U;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_FNV_H_
