#include "store/letters.h"

#include <gtest/gtest.h>

namespace benchleaf::store {
namespace {

TEST(LettersTest, LowersBeyondAscii) {
  EXPECT_EQ(Lowered("MEADOWLARK 5R1"), U"meadowlark 5r1");
  EXPECT_EQ(Lowered("\xC3\x84\xC3\x96"), U"\u00E4\u00F6");
  EXPECT_EQ(Lowered("\xFF"), U"\u00FF") << "what is not UTF-8 is taken for Latin-1";
}

TEST(LettersTest, SplitsWordsAtWhiteSpace) {
  EXPECT_EQ(WordsOf(U"  a  bc\td "), (std::vector<std::u32string>{U"a", U"bc", U"d"}));
  EXPECT_TRUE(WordsOf(U" ").empty());
}

TEST(LettersTest, CountsDifferences) {
  struct Case {
    const char32_t* a;
    const char32_t* b;
    std::size_t distance;
    const char* reason;
  };
  const Case cases[] = {
      {U"", U"", 0, "nothing"},
      {U"6cb6", U"6cb6", 0, "the same"},
      {U"6cb6", U"6cb6a", 1, "one put in"},
      {U"6cb6a", U"6cb6", 1, "one left out"},
      {U"6cb6", U"6bc6", 1, "two neighbours swapped"},
      {U"6cb6", U"6cd6", 1, "one exchanged"},
      {U"ca", U"abc", 3, "no edit within a swapped pair: that is what optimal string alignment means"},
      {U"kitten", U"sitting", 3, "two exchanged, one put in"},
      {U"", U"abc", 3, "all put in"},
      {U"abcdef", U"uvwxyz", 5, "more than the most"},
      {U"a", U"abcdefgh", 5, "far too long"},
  };
  for (const Case& c : cases) {
    EXPECT_EQ(EditDistance(c.a, c.b, 4), c.distance) << c.reason;
    EXPECT_EQ(EditDistance(c.b, c.a, 4), c.distance) << c.reason;
  }
}

}  // namespace
}  // namespace benchleaf::store
