#include "reading/word_choice.h"

#include <gmock/gmock.h>

#include <string>

namespace benchleaf {
namespace {

using testing::ElementsAre;
using testing::Field;
using testing::UnorderedElementsAre;

Word At(const std::string& text, const Box& box, double confidence, int turn = 0) {
  return {text, box, turn, confidence, WordOrigin::kString, {}};
}

TEST(WordChoice, KnowsTheFormOfADesignator) {
  // Class letters of one to three capitals (IEEE 315-1975, clause 22) and assembly prefixes (ASME Y14.44-2008).
  for (const char* text : {"R1", "C112", "CR12", "XDS4", "A4C12", "A1A2R3", "C1A", "V1B", "IC3", "R-12", "CR-3A"}) {
    EXPECT_TRUE(HasDesignatorForm(text)) << text;
  }
  // Values, tube types, pin numbers and noise.
  for (const char* text : {"", "12", "470K", "6CB6", "R", "r1", "R12345", "R1-", "ABCD1", "RI7", "CO1", "1N34A", "C1AB",
                           "R-1034", "-12", "R--1"}) {
    EXPECT_FALSE(HasDesignatorForm(text)) << text;
  }
}

TEST(WordChoice, ADesignatorBeatsASurerScrap) {
  const auto chosen = ChooseWords({At("RI7", {0, 0, 30, 20}, 0.8), At("R17", {1, 0, 30, 20}, 0.6)});
  ASSERT_EQ(chosen.size(), 1U);
  EXPECT_EQ(chosen[0].text, "R17");
  EXPECT_THAT(chosen[0].alternatives, ElementsAre(Alternative{"RI7", 0.8}));
}

TEST(WordChoice, OfTwoDesignatorsTheSurerStays) {
  const auto chosen = ChooseWords({At("R11", {0, 0, 30, 20}, 0.6), At("R17", {1, 0, 30, 20}, 0.7)});
  EXPECT_THAT(chosen, ElementsAre(Field(&Word::text, "R17")));
}

TEST(WordChoice, NeighboursBothStay) {
  const auto chosen = ChooseWords({At("R1", {0, 0, 30, 20}, 0.6), At("R2", {40, 0, 30, 20}, 0.7)});
  EXPECT_THAT(chosen, UnorderedElementsAre(Field(&Word::text, "R1"), Field(&Word::text, "R2")));
}

TEST(WordChoice, AStandingWordThatCrossesOneCellBorderIsStillFoundByItsRival) {
  const auto chosen = ChooseWords({At("C9", {95, 90, 20, 240}, 0.9, 270), At("x7", {96, 250, 18, 40}, 0.5)});
  EXPECT_THAT(chosen, ElementsAre(Field(&Word::text, "C9")));
}

TEST(WordChoice, MarksWithoutLetterOrDigitAreNoWords) {
  EXPECT_TRUE(ChooseWords({At("--", {0, 0, 30, 20}, 0.9), At("~|", {50, 0, 30, 20}, 0.9)}).empty());
  EXPECT_TRUE(ChooseWords({At("R1", {}, 0.9)}).empty()) << "no place on the page";
}

}  // namespace
}  // namespace benchleaf
