#include "extract/list_pieces.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf::extract {
namespace {

std::string Left(const std::string& line) {
  std::string texts;
  for (const Piece& piece : WithoutLeaders(PiecesOf(PageOf({line})), kCapHeight)) {
    texts += (texts.empty() ? "" : "|") + piece.text;
  }
  return texts;
}

TEST(WithoutLeaders, CutsWordsAtLeadersAndDropsLeaders) {
  const struct {
    const char* line;
    const char* left;
  } kCases[] = {
      {"R101.....470K", "R101|470K"},
      {"R101 ........ 470K", "R101|470K"},
      {"R101 . . . . 470K", "R101|470K"},
      {"C4,.-.,....CAPACITOR", "C4|CAPACITOR"},
      {"R1......05MFD", "R1|.05MFD"},  // the last dot belongs to the number
      {"R1 |470K|", "R1|470K"},
      {"R1 \"", "R1|\""},
      {"_A1_CHASSIS", "A1|CHASSIS"},
      {"P3Plug, line", "P3|Plug,|line"},
      {"I1,2Lamp", "I1,2|Lamp"},
      {"1N34A 6SN7GTB RC20GF102J 20A1161", "1N34A|6SN7GTB|RC20GF102J|20A1161"},
      {"....", ""},
  };
  for (const auto& one : kCases) {
    EXPECT_EQ(Left(one.line), one.left) << one.line;
  }
}

TEST(WithoutLeaders, SharesTheBox) {
  const auto pieces = WithoutLeaders(PiecesOf(PageOf({"R101.....470K"})), kCapHeight);
  ASSERT_EQ(pieces.size(), 2U);
  EXPECT_EQ(pieces[0].box.x, kMargin);
  EXPECT_EQ(pieces[0].box.width, 4 * kCharWidth);
  EXPECT_EQ(pieces[1].box.x, kMargin + 9 * kCharWidth);
}

TEST(WithoutLeaders, DropsDotsReadAsSmallLetters) {
  PageReading reading = PageOf({"C6 eee Capacitor"});
  reading.words[1].box.height = kCapHeight / 3;
  EXPECT_EQ(WithoutLeaders(PiecesOf(reading), kCapHeight).size(), 2U);
}

TEST(JoinByAlternatives, PutsTogetherWhatAnotherReadingHoldsWhole) {
  PageReading reading = PageOf({"208 6299 04 12"});
  reading.words[1].alternatives = {{"208-6299\u201404", 0.5}};
  Line line{PiecesOf(reading), {}};
  JoinByAlternatives(line, ShippedRules().tables());
  ASSERT_EQ(line.pieces.size(), 2U);
  EXPECT_EQ(line.pieces[0].text, "208-6299-04");
  EXPECT_EQ(line.pieces[1].text, "12");
}

}  // namespace
}  // namespace benchleaf::extract
