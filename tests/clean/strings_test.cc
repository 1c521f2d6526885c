#include "benchleaf/clean/clean_page.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cstdint>
#include <vector>

namespace benchleaf {
namespace {

// A level page with capitals 24 px high.
class StringsTest : public testing::Test {
 protected:
  void Put(const Box& box) {
    for (int y = box.y; y < box.bottom(); ++y) {
      ink_.row(y).Ink(box.x, box.right());
      std::fill_n(grey_.row(y) + box.x, box.width, level_);
    }
  }
  // An open box with a stem, as high and wide as a letter.
  void PutLetter(int x, int y, int width = 16, int height = 24) {
    Put({x, y, 3, height});
    Put({x, y, width, 3});
    Put({x, y + height / 2 - 1, width - 2, 3});
  }
  // The longest string that is worth reading.
  Box Longest(bool standing) {
    CleanPage page;
    page.grey = grey_;
    page.ink = ink_;
    page.measures.cap_height_px = kLevelCapPx;
    page.components = FindComponents(ink_);
    TextString longest;
    for (const TextString& string : FindStrings(page, kStringGaps)) {
      if (string.standing == standing && IsReadable(page, string) && string.length() > longest.length()) {
        longest = string;
      }
    }
    return longest.box;
  }

  std::uint8_t level_ = 40;  // of what is put next

 private:
  InkImage ink_{400, 300};
  GreyImage grey_{400, 300};
};

TEST_F(StringsTest, JoinsLettersByTheirOwnHeight) {
  PutLetter(100, 100, 10, 15);  // small lettering
  PutLetter(114, 100, 10, 15);
  PutLetter(69, 96, 18, 24);  // a symbol 13 px before it, which is near for capitals of the page
  EXPECT_EQ(Longest(false), (Box{100, 100, 24, 15}));
}

TEST_F(StringsTest, GivesNarrowLettersTheirRoom) {
  PutLetter(100, 100);
  Put({127, 100, 3, 24});  // 11 px
  Put({147, 100, 3, 24});  // 17 px, further than two broad letters may stand apart
  EXPECT_EQ(Longest(false), (Box{100, 100, 50, 24}));
}

// As wide as a letter, with a letter's air about it: 73000-1 in typewriting.
TEST_F(StringsTest, ADashJoinsTheLettersBesideIt) {
  PutLetter(100, 100);
  PutLetter(124, 100);
  Put({148, 110, 18, 4});
  PutLetter(173, 100);
  EXPECT_EQ(Longest(false), (Box{100, 100, 89, 24}));
}

TEST_F(StringsTest, LeavesOutATickOfAPencil) {
  PutLetter(124, 100);
  PutLetter(148, 100);
  level_ = 120;
  PutLetter(100, 97, 18, 30);
  EXPECT_EQ(Longest(false), (Box{124, 100, 40, 24}));
}

TEST_F(StringsTest, KeepsPaleLettersAmongOthersThatDiffer) {
  PutLetter(124, 100);
  level_ = 90;
  PutLetter(148, 100);
  level_ = 120;
  PutLetter(100, 100);
  EXPECT_EQ(Longest(false), (Box{100, 100, 64, 24}));
}

TEST_F(StringsTest, LeavesOutADashAtTheEnd) {
  Put({75, 110, 18, 4});
  PutLetter(100, 100);
  PutLetter(124, 100);
  Put({148, 110, 18, 4});
  EXPECT_EQ(Longest(false), (Box{100, 100, 40, 24}));
}

// The plate of a capacitor between two names.
TEST_F(StringsTest, ALongBarIsNoDash) {
  PutLetter(100, 100);
  PutLetter(124, 100);
  Put({148, 110, 30, 4});
  PutLetter(184, 100);
  EXPECT_EQ(Longest(false), (Box{100, 100, 40, 24}));
}

TEST_F(StringsTest, PutsBrokenLettersTogether) {
  PutLetter(100, 100);
  Put({124, 100, 4, 9});  // a stem in three pieces, none of a letter's size
  Put({124, 111, 4, 7});
  Put({124, 120, 4, 4});
  EXPECT_EQ(Longest(false), (Box{100, 100, 28, 24}));
}

TEST_F(StringsTest, PiecesNeverTieTwoRowsTogether) {
  PutLetter(100, 100);
  PutLetter(122, 100);
  Put({110, 126, 5, 5});  // dirt between the rows
  PutLetter(100, 133);
  PutLetter(122, 133);
  EXPECT_LE(Longest(false).height, 31);
}

TEST_F(StringsTest, ReadsTwoSmallLettersThatTouchButNoOutline) {
  PutLetter(100, 100, 14, 17);
  PutLetter(112, 100, 14, 17);
  Put({200, 100, 27, 3});  // a small box
  Put({200, 114, 27, 3});
  Put({200, 100, 3, 17});
  Put({224, 100, 3, 17});
  EXPECT_EQ(Longest(false), (Box{100, 100, 26, 17}));
}

}  // namespace
}  // namespace benchleaf
