#include "benchleaf/core/fnv.h"

#include <gtest/gtest.h>

#include <string>
#include <string_view>

namespace benchleaf {
namespace {

std::string Digest(std::string_view text) {
  Fnv fnv;
  fnv.Add(text);
  return fnv.Hex();
}

// Test vectors of draft-eastlake-fnv, appendix C (from memory), and the offset basis for nothing.
TEST(Fnv, AgreesWithThePublishedVectors) {
  EXPECT_EQ(Digest(""), "cbf29ce484222325");
  EXPECT_EQ(Digest("a"), "af63dc4c8601ec8c");
  EXPECT_EQ(Digest("foobar"), "85944171f73967e8");
}

TEST(Fnv, TakesBytesInAnyPieces) {
  Fnv fnv;
  fnv.Add("foo");
  fnv.Add("bar");
  EXPECT_EQ(fnv.Hex(), Digest("foobar"));
}

// The first of the numbers from 0 on whose digest begins with a nought.
TEST(Fnv, KeepsLeadingNoughts) {
  int number = 0;
  while (Digest(std::to_string(number))[0] != '0') ++number;
  EXPECT_EQ(Digest(std::to_string(number)).size(), 16U);
}

}  // namespace
}  // namespace benchleaf
