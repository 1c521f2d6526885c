#include "extract/plain_text.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf::extract {
namespace {

TEST(PlainText, SpellsTypographyInAscii) {
  EXPECT_EQ(PlainText("R1\u2013R8"), "R1-R8");
  EXPECT_EQ(PlainText(".05 \u00b5F"), ".05uF");
  EXPECT_EQ(PlainText("470\u03a9"), "470OHM");
  EXPECT_EQ(PlainText("\u00bd12AU7"), "1/212AU7");
  EXPECT_EQ(PlainText("\u201c"), "\"");
  EXPECT_EQ(PlainText("\u00d8"), "\u00d8") << "a slashed nought is kept for the table of look-alikes";
}

TEST(PlainText, SurvivesBytesThatAreNoUtf8) { EXPECT_EQ(PlainText("\xff\xc3"), "\xff\xc3"); }

TEST(Trimmed, TakesPunctuationOffBothEnds) {
  EXPECT_EQ(Trimmed("(R12),"), "R12");
  EXPECT_EQ(Trimmed("6AU6*"), "6AU6");
  EXPECT_EQ(Trimmed("...R7..."), "R7");
  EXPECT_EQ(Trimmed(".05"), ".05") << "the dot belongs to the number";
  EXPECT_EQ(Trimmed("...,"), "");
  EXPECT_EQ(Trimmed(""), "");
}

TEST(Trimmed, IsAViewIntoTheTextOnDemand) {
  const std::string text = "(R12),";
  EXPECT_EQ(TrimmedView(text), "R12");
  EXPECT_EQ(TrimmedView(text).data(), text.data() + 1);
}

}  // namespace
}  // namespace benchleaf::extract
