#include "extract/look_alikes.h"

#include "extract/page_text.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"
#include "benchleaf/extract/extract.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

std::string Fold(const std::string& text) { return FoldLookAlikes(text, ShippedRules()); }

TEST(FoldLookAlikes, BringsTextsTogetherThatLookAlike) {
  const struct {
    const char* a;
    const char* b;
  } kPairs[] = {
      {"R1O1", "R101"},                                                      // O for 0
      {"RQ1", "RO1"},                                                        // Q is an O with a tail
      {"Rl7", "RI7"},                                                        // strokes
      {"R|7", "R17"},                                                        //
      {"C5", "CS"},                                                          // S for 5
      {"12AX7", "IZAX7"}, {"6BQ7", "6807"}, {"$2", "S2"}, {"6sn7", "6SN7"},  // typed in small letters
      {"\u00d8", "0"},                                                       // slashed nought
  };
  for (const auto& pair : kPairs) {
    EXPECT_EQ(Fold(pair.a), Fold(pair.b)) << pair.a << " " << pair.b;
  }
}

TEST(FoldLookAlikes, KeepsApartWhatDoesNotLookAlike) {
  EXPECT_NE(Fold("R12"), Fold("R13"));
  EXPECT_NE(Fold("C4"), Fold("R4"));
  EXPECT_NE(Fold("6CB6"), Fold("6CG7"));
}

TEST(FoldLookAlikes, IsStable) {
  for (const char* text : {"R1O1", "12AX7A/ECC83", "74-1032-5", "", "\xff"}) {
    EXPECT_EQ(Fold(Fold(text)), Fold(text));
  }
}

TEST(Unlikeness, SumsWhatEachCharacterTakes) {
  const auto unlike = [](const char* read, const char* meant) {
    return extract::Unlikeness(Characters(read), meant, ShippedRules().tables());
  };
  EXPECT_EQ(unlike("R12", "R12"), 0);
  EXPECT_EQ(unlike("RI2", "R12"), 0.5) << "everyday";
  EXPECT_EQ(unlike("6AUG", "6AU6"), 1) << "seldom";
  EXPECT_EQ(unlike("r12", "R12"), 0.1) << "a small letter";
  EXPECT_EQ(unlike("R|S", "R15"), 1.5);
  EXPECT_FALSE(unlike("R12", "R13").has_value()) << "of two classes";
  EXPECT_FALSE(unlike("R1", "R12").has_value()) << "of two lengths";
}

}  // namespace
}  // namespace benchleaf
