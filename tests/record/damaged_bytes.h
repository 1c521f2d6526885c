// Bytes spoilt at random, by a fixed seed, to show that a decoder takes anything.

#ifndef BENCHLEAF_TESTS_RECORD_DAMAGED_BYTES_H_
#define BENCHLEAF_TESTS_RECORD_DAMAGED_BYTES_H_

#include <cstddef>
#include <random>
#include <string>

namespace benchleaf {

// The bytes with one to four changes: a byte replaced, removed, doubled, or everything behind it cut off.
inline std::string Damaged(std::string bytes, std::mt19937& random) {
  const unsigned changes = 1 + random() % 4;
  for (unsigned i = 0; i < changes && !bytes.empty(); ++i) {
    const std::size_t at = random() % bytes.size();
    switch (random() % 4) {
      case 0:
        bytes[at] = static_cast<char>(random());
        break;
      case 1:
        bytes.erase(at, 1);
        break;
      case 2:
        bytes.insert(at, 1, bytes[at]);
        break;
      default:
        if (random() % 8 == 0) bytes.resize(at);
        break;
    }
  }
  return bytes;
}

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_RECORD_DAMAGED_BYTES_H_
