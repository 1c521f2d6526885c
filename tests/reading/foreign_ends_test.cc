#include "reading/foreign_ends.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

// A level page with one string, whose letters have these levels of ink, 0 black to 255.
class ForeignEndsTest : public testing::Test {
 protected:
  void Print(std::initializer_list<std::uint8_t> levels, bool standing = false) {
    InkImage ink(300, 300);
    page_.grey = GreyImage(300, 300, 255);
    Box box = {100, 100, 16, 24};
    for (const std::uint8_t level : levels) {
      for (int y = box.y; y < box.bottom(); ++y) {
        ink.row(y).Ink(box.x, box.right());
        std::fill_n(page_.grey.row(y) + box.x, box.width, level);
      }
      (standing ? box.y : box.x) += 30;
    }
    page_.components = FindComponents(ink);
    string_.standing = standing;
    string_.letters = levels.size();
    string_.members.resize(levels.size());
    for (std::size_t i = 0; i < levels.size(); ++i) string_.members[i] = i;
    string_.box = BoxOf(page_.components, string_.members);
  }

  // The boxes of what is left of a string that was read so.
  std::vector<Box> Left(const std::string& text, double confidence, int turn = 0) {
    std::vector<Box> boxes;
    for (const TextString& cut : WithoutForeignEnds(page_, string_, {text, string_.box, turn, confidence, {}, {}})) {
      EXPECT_EQ(cut.members.size(), string_.members.size() - 1);
      EXPECT_EQ(cut.letters, string_.letters - 1);
      boxes.push_back(cut.box);
    }
    return boxes;
  }

 private:
  CleanPage page_;
  TextString string_;
};

TEST_F(ForeignEndsTest, ATickOfAPencilIsCutOff) {
  Print({140, 80, 85});
  EXPECT_EQ(Left("VR5", 0.7), std::vector<Box>({{130, 100, 46, 24}}));
  EXPECT_TRUE(Left("MR5", 0.7).empty()) << "no tick is read as an M";
}

TEST_F(ForeignEndsTest, WhatIsReadSurelyAndDiffersLittleIsKept) {
  Print({105, 80, 85});
  EXPECT_TRUE(Left("VR5", 0.98).empty());
  Print({140, 80, 85});
  EXPECT_EQ(Left("VR5", 0.98).size(), 1U) << "so pale is no letter of this string";
}

TEST_F(ForeignEndsTest, LettersThatDifferAmongThemselvesProveNothing) {
  Print({140, 80, 135});
  EXPECT_TRUE(Left("VR5", 0.7).empty());
}

TEST_F(ForeignEndsTest, TheEndOfAWireBesidePaleLettersIsCutOff) {
  Print({200, 205, 70});
  EXPECT_EQ(Left("R5S", 0.2), std::vector<Box>({{100, 100, 46, 24}}));
  EXPECT_TRUE(Left("R51", 0.98).empty()) << "read surely";
}

TEST_F(ForeignEndsTest, TheFirstLetterOfAStandingStringIsAtItsFoot) {
  Print({80, 85, 140}, true);
  EXPECT_EQ(Left("VR5", 0.7, 270), std::vector<Box>({{100, 100, 16, 54}}));
  EXPECT_TRUE(Left("VR5", 0.7, 90).empty());
}

TEST_F(ForeignEndsTest, NoStringBecomesWhatIsNoDesignator) {
  Print({140, 80, 85});
  EXPECT_TRUE(Left("V15", 0.5).empty());
  EXPECT_TRUE(Left("", 0.5).empty());
}

}  // namespace
}  // namespace benchleaf
