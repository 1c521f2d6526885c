#include "benchleaf/labels/label.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace benchleaf {
namespace {

long Ink(const GreyImage& label) {
  return std::count_if(label.pixels.begin(), label.pixels.end(), [](std::uint8_t grey) { return grey < 128; });
}

TEST(Label, IsOneLineOfTheHeightAskedFor) {
  for (const int height : {14, 24, 60}) {
    const GreyImage label = Label("Quillhaven 12\nV9", {.height_px = height});
    EXPECT_EQ(label.height, height);
    EXPECT_GT(label.width, 4 * height);
    EXPECT_GT(Ink(label), height * 5);
    // Nothing is cut off above or below.
    EXPECT_EQ(std::count_if(label.row(0), label.row(0) + label.width, [](std::uint8_t grey) { return grey < 128; }), 0);
  }
}

TEST(Label, EndsALongTextInAnEllipsis) {
  const GreyImage label = Label("the sweep generator of the long workbench", {.height_px = 20, .max_width_px = 120});
  EXPECT_LE(label.width, 120);
  EXPECT_GT(label.width, 90);
}

TEST(Label, LettersBeyondLatinAreDrawnToo) {
  for (const char* text : {"\u00C4hrenfeld \u2126", "\u0420\u0430\u0434\u0438\u043E"}) {
    EXPECT_GT(Ink(Label(text, {.height_px = 24})), 100) << text;
  }
}

TEST(Label, BoldTakesMoreInk) {
  EXPECT_GT(Ink(Label("6CB6", {.height_px = 24, .weight = LabelWeight::kBold})), Ink(Label("6CB6", {.height_px = 24})));
}

TEST(Label, OfNothingIsEmpty) { EXPECT_TRUE(Label("", {}).empty()); }

}  // namespace
}  // namespace benchleaf
