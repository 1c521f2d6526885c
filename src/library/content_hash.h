// The fingerprint of a file's content.

#ifndef BENCHLEAF_LIBRARY_CONTENT_HASH_H_
#define BENCHLEAF_LIBRARY_CONTENT_HASH_H_

#include <cstdint>
#include <memory>
#include <span>
#include <string>

namespace benchleaf {

// SHA-256 (FIPS 180-4) of bytes that come in pieces.
class ContentHash {
 public:
  ContentHash();
  ~ContentHash();
  ContentHash(const ContentHash&) = delete;
  ContentHash& operator=(const ContentHash&) = delete;

  void Add(std::span<const std::uint8_t> bytes);

  // Of all that was added, as 64 lower-case hexadecimal digits; begins anew.
  std::string Take();

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_CONTENT_HASH_H_
