#include "library/content_hash.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

std::string HashOf(const std::string& text, std::size_t piece) {
  const std::vector<std::uint8_t> bytes(text.begin(), text.end());
  ContentHash hash;
  for (std::size_t at = 0; at < bytes.size(); at += piece) {
    hash.Add(std::span(bytes).subspan(at, std::min(piece, bytes.size() - at)));
  }
  return hash.Take();
}

// The digests are those of NIST's example values for SHA-256 (FIPS 180-4 examples).
TEST(ContentHashTest, IsSha256) {
  EXPECT_EQ(HashOf("", 1), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(HashOf("abc", 3), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(HashOf("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq", 56),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST(ContentHashTest, DoesNotDependOnThePieces) {
  const std::string text(1000, 'x');
  EXPECT_EQ(HashOf(text, 1), HashOf(text, 1000));
  EXPECT_EQ(HashOf(text, 63), HashOf(text, 64));
}

}  // namespace
}  // namespace benchleaf
