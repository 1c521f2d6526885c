#include "extract/list_words.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

namespace benchleaf::extract {
namespace {

const Rules::Tables& Tables() { return ShippedRules().tables(); }

TEST(ListWord, IsInCapitalsWithoutPunctuation) {
  EXPECT_EQ(ListWord("Assy."), "ASSY");
  EXPECT_EQ(ListWord("(p.o.)"), "PO");
  EXPECT_EQ(ListWord("''"), "''") << "a sign of repetition";
  EXPECT_EQ(ListWord("..."), "");
}

TEST(RolesOf, AreAllThatAWordHas) {
  EXPECT_TRUE(RolesOf("THRU", Tables()).Has(ListRole::kRange));
  EXPECT_FALSE(RolesOf("THRU", Tables()).Has(ListRole::kTube));
  EXPECT_TRUE(HasRole("TUBES", ListRole::kTube, Tables()));
  EXPECT_FALSE(HasRole("", ListRole::kTube, Tables()));
}

TEST(MayHaveRole, ForgivesALetterOrTwoEachTimeItIsAsked) {
  for (int time = 0; time < 2; ++time) {
    EXPECT_TRUE(MayHaveRole("ASSEMBIY", ListRole::kUnit, Tables()));
    EXPECT_FALSE(MayHaveRole("ASSEMBIY", ListRole::kTube, Tables())) << "what it may be of another role is told apart";
    EXPECT_FALSE(MayHaveRole("CAPACITOR", ListRole::kUnit, Tables()));
  }
}

TEST(WithSignsForWords, StandsOnlyBehindAFigure) {
  EXPECT_EQ(WithSignsForWords("R1THRUR8", Tables()), "R1-R8");
  EXPECT_EQ(WithSignsForWords("C1THRUC3THRUC5", Tables()), "C1-C3-C5");
  EXPECT_EQ(WithSignsForWords("FEEDTHRUX", Tables()), "FEEDTHRUX");
}

}  // namespace
}  // namespace benchleaf::extract
