#include "library/content_hash.h"

#include <nettle/sha2.h>

#include <array>
#include <string_view>

namespace benchleaf {

struct ContentHash::State {
  sha256_ctx context{};
};

ContentHash::ContentHash() : state_(std::make_unique<State>()) { sha256_init(&state_->context); }

ContentHash::~ContentHash() = default;

void ContentHash::Add(std::span<const std::uint8_t> bytes) {
  sha256_update(&state_->context, bytes.size(), bytes.data());
}

std::string ContentHash::Take() {
  constexpr std::string_view kDigits = "0123456789abcdef";
  std::array<std::uint8_t, SHA256_DIGEST_SIZE> digest{};
  sha256_digest(&state_->context, digest.size(), digest.data());
  std::string text;
  text.reserve(2 * digest.size());
  for (const unsigned byte : digest) {
    text += kDigits[byte >> 4U];
    text += kDigits[byte & 0xFU];
  }
  return text;
}

}  // namespace benchleaf
