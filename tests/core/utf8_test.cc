#include "benchleaf/core/utf8.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(Characters, AreCutOutOfUtf8) {
  const std::string_view text = "47 k\u03a9";
  EXPECT_EQ(Characters(text), (std::vector<std::string_view>{"4", "7", " ", "k", "\u03a9"}));
  EXPECT_EQ(CharacterLength(text, 4), 2U);
  EXPECT_TRUE(Characters("").empty());
}

TEST(Characters, OfBytesThatAreNoUtf8AreTheBytes) {
  EXPECT_EQ(Characters("R\xe2\x82").size(), 3U) << "a cut sequence";
  EXPECT_EQ(Characters("\x80z").size(), 2U) << "a continuation without a start";
}

}  // namespace
}  // namespace benchleaf
