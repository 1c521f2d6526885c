#include "scan-maker/callouts.h"

#include "scan-maker/ink_test_support.h"
#include "scan-maker/sheet.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf::scanmaker {
namespace {

MadePage Page(const std::string& designator) {
  Sheet sheet(800, 600);
  TextStyle style;
  style.stroke_px = 3;
  sheet.Put(400, 300, TermToken("designator", designator), style);
  return sheet.Take("parts locator", "");
}

TEST(CalloutsTest, ARingGoesRoundTheText) {
  const MadePage page = Page("R12");
  const Box& text = page.terms.front().box;
  const MadePage ringed = WithRings(page, 1);
  EXPECT_EQ(ringed.terms.front().box, text);
  EXPECT_TRUE(HoldsInk(ringed.image, {text.x, text.y - 60, text.width, 60}));
  EXPECT_TRUE(HoldsInk(ringed.image, {text.x, text.bottom(), text.width, 60}));
}

TEST(CalloutsTest, UpendedTextStandsInItsPlace) {
  const MadePage page = Page("R12");
  const MadePage upended = WithUpended(page);
  EXPECT_EQ(upended.terms.front().turn, 180);
  EXPECT_EQ(Crop(upended.image, upended.terms.front().box), Turned(Crop(page.image, page.terms.front().box), 180));
}

TEST(CalloutsTest, SpacedLettersTakeMoreRoom) {
  const MadePage page = Page("R12");
  const MadePage spaced = WithSpacedLetters(page);
  const Box& before = page.terms.front().box;
  const Box& after = spaced.terms.front().box;
  EXPECT_EQ(after.width, before.width + 2 * static_cast<int>(0.55 * before.height + 0.5));
  EXPECT_TRUE(HoldsInk(spaced.image, {after.right() - 3, after.y, 3, after.height}));
}

TEST(CalloutsTest, ADashStandsBetweenLettersAndFigures) {
  const MadePage page = Page("R12");
  const Box& before = page.terms.front().box;
  const MadePage dashed = WithDashes(page);
  const Box& after = dashed.terms.front().box;
  EXPECT_EQ(after.width, before.width + before.height);
  EXPECT_TRUE(HoldsInk(dashed.image, {after.right() - 3, after.y, 3, after.height}));
  EXPECT_EQ(dashed.terms.front().text, "R12");
}

TEST(CalloutsTest, WhiteOnBlackKeepsTheText) {
  const MadePage page = Page("R12");
  const Box& text = page.terms.front().box;
  const MadePage inverted = WithWhiteOnBlack(page);
  EXPECT_TRUE(HoldsInk(inverted.image, {text.x - 4, text.y - 4, 4, 4}));
  int light = 0;
  for (const std::uint8_t level : Crop(inverted.image, text).pixels) light += level > 128 ? 1 : 0;
  EXPECT_GT(light, 100);
}

TEST(CalloutsTest, OnlyDesignatorsStayOnAPhotograph) {
  Sheet sheet(1600, 1200);
  for (int y = 100; y < 1150; y += 100) {
    for (int x = 50; x < 1500; x += 200) {
      const std::string number = std::to_string(x) + std::to_string(y);
      sheet.Put(x, y, TermToken("designator", "R" + number.substr(0, 2)), {});
      sheet.Put(x, y + 40, TermToken("value", "47K"), {});
    }
  }
  const MadePage page = sheet.Take("parts locator", "");
  const MadePage printed = WithPhotographs(page, 1);
  const auto count = [](const MadePage& made, const std::string& kind) {
    int found = 0;
    for (const MadeTerm& term : made.terms) found += term.kind == kind ? 1 : 0;
    return found;
  };
  EXPECT_EQ(count(printed, "designator"), count(page, "designator"));
  EXPECT_LT(count(printed, "value"), count(page, "value"));
}

}  // namespace
}  // namespace benchleaf::scanmaker
