#include "library/natural_order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

TEST(NaturalOrderTest, CountsAsAPersonDoes) {
  const struct {
    const char* before;
    const char* after;
    const char* reason;
  } kCases[] = {
      {"page-2", "page-10", "numbers, not digits"},
      {"page-2", "page-03", "leading zeros do not count"},
      {"page-02", "page-2", "equal numbers fall back to bytes"},
      {"page", "page-1", "the shorter name first"},
      {"Page-1", "page-2", "capitals do not count"},
      {"a/z.pdf", "a-b/a.pdf", "a folder's files come together"},
      {"99999999999999999999999998", "99999999999999999999999999", "numbers longer than any integer"},
      {"a", "\xC3\xA4", "other bytes after ASCII"},
      {"", "a", "nothing comes first"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    EXPECT_TRUE(NaturalLess(c.before, c.after));
    EXPECT_FALSE(NaturalLess(c.after, c.before));
    EXPECT_FALSE(NaturalLess(c.before, c.before));
  }
}

TEST(NaturalOrderTest, IsTheSameWhateverTheOrderBefore) {
  const std::vector<std::string> sorted = {"1", "01a", "1a", "2", "10", "A", "a", "a/b", "a1", "a01b", "a1b", "b"};
  std::vector<std::string> names = sorted;
  std::sort(names.begin(), names.end(), NaturalLess);
  const std::vector<std::string> once = names;
  for (int i = 0; i < 100; ++i) {
    std::next_permutation(names.begin(), names.end());
    std::vector<std::string> again = names;
    std::sort(again.begin(), again.end(), NaturalLess);
    EXPECT_EQ(again, once);
  }
}

TEST(NaturalOrderTest, LowersOnlyAsciiLetters) { EXPECT_EQ(LowerAscii("Vol-2 \xC3\x84Z"), "vol-2 \xC3\x84z"); }

}  // namespace
}  // namespace benchleaf
