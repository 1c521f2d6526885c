#include "benchleaf/clean/spaced_strings.h"

#include <gtest/gtest.h>

#include <initializer_list>
#include <vector>

namespace benchleaf {
namespace {

CleanPage Page() {
  CleanPage page;
  page.measures.cap_height_px = 24;
  return page;
}

// Lone letters at these places along a row.
std::vector<TextString> Row(std::initializer_list<int> places, int y = 100) {
  std::vector<TextString> letters;
  for (const int x : places) {
    TextString letter;
    letter.box = {x, y, 16, 24};
    letter.members = {letters.size()};
    letter.letters = 1;
    letters.push_back(letter);
  }
  return letters;
}

TEST(SpacedStrings, LettersAtEvenDistancesMakeOne) {
  const std::vector<TextString> found = FindSpacedStrings(Page(), Row({100, 136, 174}));
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found.front().box, (Box{100, 100, 90, 24}));
  EXPECT_EQ(found.front().letters, 3U);
  EXPECT_EQ(found.front().members, (std::vector<std::size_t>{0, 1, 2}));
}

TEST(SpacedStrings, WhatStandsFartherOffIsNoPart) {
  const std::vector<TextString> found = FindSpacedStrings(Page(), Row({100, 136, 190}));
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found.front().letters, 2U);
}

TEST(SpacedStrings, NeitherTwoRowsNorALineOfTextMakeOne) {
  std::vector<TextString> letters = Row({100});
  letters.push_back(Row({136}, 112).front());
  EXPECT_TRUE(FindSpacedStrings(Page(), letters).empty());
  EXPECT_TRUE(FindSpacedStrings(Page(), Row({100, 136, 172, 208, 244, 280})).empty());
}

TEST(SpacedStrings, OnlyWideGapsAreClosed) {
  GreyImage line(100, 58);
  for (const int x : {13, 20, 60}) {
    line.row(30)[x] = 0;
  }
  const GreyImage closed = ClosedUp(line);
  EXPECT_EQ(closed.row(30)[13], 0);
  EXPECT_EQ(closed.row(30)[20], 0);
  EXPECT_EQ(closed.row(30)[29], 0);
  EXPECT_EQ(closed.width - 30, line.width - 61) << "the border stays";
}

}  // namespace
}  // namespace benchleaf
