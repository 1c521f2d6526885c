#include "benchleaf/extract/misread_words.h"

#include "extract/page_text.h"

#include "benchleaf/extract/extract.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::Not;

Word Read(const std::string& text, double confidence = 0.9, std::vector<Alternative> alternatives = {}) {
  Word word;
  word.text = text;
  word.confidence = confidence;
  word.alternatives = std::move(alternatives);
  return word;
}

std::string Folded(const std::string& text) { return FoldLookAlikes(text, ShippedRules()); }

TEST(FoldedReadings, AreTheTextWithoutSignsAtItsEdges) {
  EXPECT_THAT(FoldedReadings(Read("(R107)."), ShippedRules()), ElementsAre(Folded("R107")));
  EXPECT_EQ(FoldedReadings(Read("RIO7"), ShippedRules()), FoldedReadings(Read("R107"), ShippedRules()))
      << "look-alikes are one";
}

TEST(FoldedReadings, LeaveOutAStrokeInFrontOfALetter) {
  EXPECT_THAT(FoldedReadings(Read("IV4"), ShippedRules()), Contains(Folded("V4")));
  EXPECT_THAT(FoldedReadings(Read("|V4"), ShippedRules()), Contains(Folded("V4")));
  EXPECT_THAT(FoldedReadings(Read("147"), ShippedRules()), Not(Contains(Folded("47")))) << "no letter behind it";
}

TEST(FoldedReadings, AreOfEveryReadingThatIsNoScrap) {
  const Word word = Read("C13", 0.6, {{"C18", 0.2}, {"C78", 0.001}});
  EXPECT_THAT(FoldedReadings(word, ShippedRules()), ElementsAre(Folded("C13"), Folded("C18")));
}

TEST(FoldedReadings, AreOfTextsThatTermsMayHave) {
  EXPECT_THAT(FoldedReadings(Read("CHASSIS"), ShippedRules()), IsEmpty()) << "no figure";
  EXPECT_THAT(FoldedReadings(Read("7"), ShippedRules()), IsEmpty());
  EXPECT_THAT(FoldedReadings(Read("123456789012345"), ShippedRules()), IsEmpty()) << "15 characters";
  EXPECT_THAT(FoldedReadings(Read(""), ShippedRules()), IsEmpty());
}

TEST(LikenessOf, FallsWithEveryCharacterThatMustBeTakenForAnother) {
  const auto likeness = [](const char* read) { return LikenessOf(read, "R107", ShippedRules()); };
  EXPECT_EQ(likeness("R107"), 1);
  EXPECT_EQ(likeness("(R107)"), 1) << "signs at the edges";
  EXPECT_LT(likeness("R1O7"), 1);
  EXPECT_GT(likeness("R1O7"), likeness("R1S7"));
  EXPECT_EQ(likeness("TONE"), 0);
  EXPECT_DOUBLE_EQ(LikenessOf("IV4", "V4", ShippedRules()), std::exp(-0.7)) << "the outline of a part beside V4";
}

TEST(LikenessOf, IsThatOfAWordsBestReading) {
  const Word word = Read("C73", 0.6, {{"C13", 0.5}, {"C13", 0.001}});
  EXPECT_DOUBLE_EQ(LikenessOf(word, "C13", ShippedRules()), 0.5);
  EXPECT_EQ(LikenessOf(Read("C13", 0.001), "C13", ShippedRules()), 0) << "a scrap";
}

TEST(LikenessOf, TakesNoShortNumberForADesignator) {
  EXPECT_EQ(LikenessOf(Read("54"), "S4", ShippedRules()), 0);
  EXPECT_GT(LikenessOf(Read("s4"), "S4", ShippedRules()), 0);
  EXPECT_GT(LikenessOf(Read("6SN7GT"), "6SN7GT", ShippedRules()), 0.8) << "types begin with figures";
}

}  // namespace
}  // namespace benchleaf
