#include "record/utf8.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(Utf8Test, LeavesWhatIsUtf8) {
  for (const char* text : {"", "C112", "47 k\xCE\xA9", "\xE2\x89\xA5 1", "\xF0\x9F\x94\x8A"}) {
    EXPECT_TRUE(IsUtf8(text)) << text;
    EXPECT_EQ(MendedUtf8(text), text);
  }
}

TEST(Utf8Test, MendsWhatIsNot) {
  struct Case {
    const char* text;
    const char* reason;
  };
  // Ill-formed sequences of the Unicode Standard, table 3-7.
  const Case cases[] = {
      {"a\xFFz", "a byte that never occurs"},
      {"a\xC0\xAFz", "an overlong form"},
      {"a\xED\xA0\x80z", "half of a surrogate pair"},
      {"a\xF4\x90\x80\x80z", "beyond U+10FFFF"},
      {"a\xE2\x82z", "a cut sequence"},
      {"a\x80z", "a continuation without a start"},
  };
  for (const Case& c : cases) {
    EXPECT_FALSE(IsUtf8(c.text)) << c.reason;
    const std::string mended = MendedUtf8(c.text);
    EXPECT_TRUE(IsUtf8(mended)) << c.reason;
    EXPECT_EQ(mended.front(), 'a') << c.reason;
    EXPECT_EQ(mended.back(), 'z') << c.reason;
    EXPECT_NE(mended.find("\xEF\xBF\xBD"), std::string::npos) << c.reason;
  }
}

TEST(Utf8Test, KeepsZeroBytesAndQuotes) {
  const std::string text("\"\\\0\xC2\xB5", 5);
  EXPECT_EQ(MendedUtf8(text), text);
}

}  // namespace
}  // namespace benchleaf
