#include "benchleaf/report/text.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

TEST(CleanText, TakesAwayWhatATerminalWouldObey) {
  struct Case {
    const char* why;
    std::string text;
    std::string clean;
  };
  const std::vector<Case> cases = {
      {"plain text stays", "C112 .047 MFD", "C112 .047 MFD"},
      {"letters beyond ASCII stay", "1 k\u03A9 \u00B5F", "1 k\u03A9 \u00B5F"},
      {"an escape sequence (ECMA-48) loses its escape", "\x1b[31mC1", "\uFFFD[31mC1"},
      {"a title-setting sequence ends in BEL", "\x1b]0;x\x07", "\uFFFD]0;x\uFFFD"},
      {"C1 controls: U+009B begins a sequence too",
       "\xC2\x9B"
       "31mC1",
       "\uFFFD31mC1"},
      {"a carriage return would write over the line", "C1\rC2", "C1 C2"},
      {"a line break would break the table", "C1\nC2\tC3", "C1 C2 C3"},
      {"the Unicode line separator too",
       "C1\xE2\x80\xA8"
       "C2",
       "C1 C2"},
      {"right-to-left override turns a file's name round",
       "a\xE2\x80\xAE"
       "fdp.exe",
       "a\uFFFDfdp.exe"},
      {"a byte that is no UTF-8",
       "C\xFF"
       "1",
       "C\uFFFD1"},
      {"a character cut off at the end", "C\xE2\x82", "C\uFFFD\uFFFD"},
      {"a NUL within",
       std::string("C\0"
                   "1",
                   3),
       "C\uFFFD1"},
      {"nothing", "", ""},
  };
  for (const Case& c : cases) EXPECT_EQ(CleanText(c.text), c.clean) << c.why;
}

TEST(DisplayWidth, CountsColumnsNotBytes) {
  struct Case {
    const char* why;
    std::string text;
    int width;
  };
  const std::vector<Case> cases = {
      {"ASCII", "C112", 4},
      {"two bytes, one column", "\u03A9", 1},
      {"CJK takes two columns (Unicode UAX 11)", "\u771F\u7A7A\u7BA1", 6},
      {"a combining mark takes none", "e\u0301", 1},
      {"the replacement character takes one", "\uFFFD", 1},
      {"nothing", "", 0},
  };
  for (const Case& c : cases) EXPECT_EQ(DisplayWidth(c.text), c.width) << c.why;
}

TEST(Wrapped, BreaksAtSpacesAndOnlyElseWithinWords) {
  struct Case {
    const char* why;
    std::string text;
    int width;
    std::vector<std::string> lines;
  };
  const std::vector<Case> cases = {
      {"fits", "upper left", 10, {"upper left"}},
      {"one column short", "upper left", 9, {"upper", "left"}},
      {"a word wider than the line is broken", "chassis-volume-2.pdf", 8, {"chassis-", "volume-2", ".pdf"}},
      {"and starts a new line", "in chassis.pdf", 8, {"in", "chassis.", "pdf"}},
      {"spaces at breaks vanish", "a  b   c", 1, {"a", "b", "c"}},
      {"a wide character is never halved", "\u771F\u7A7A\u7BA1", 3, {"\u771F", "\u7A7A", "\u7BA1"}},
      {"a wide character in a column of one stands alone", "\u771F\u7A7A", 1, {"\u771F", "\u7A7A"}},
      {"nothing is one empty line", "", 5, {""}},
      {"only spaces too", "   ", 5, {""}},
  };
  for (const Case& c : cases) EXPECT_EQ(Wrapped(c.text, c.width), c.lines) << c.why;
}

TEST(Counted, KnowsOneFromMany) {
  EXPECT_EQ(Counted(0, "place"), "0 places");
  EXPECT_EQ(Counted(1, "place"), "1 place");
  EXPECT_EQ(Counted(2, "place"), "2 places");
}

}  // namespace
}  // namespace benchleaf
