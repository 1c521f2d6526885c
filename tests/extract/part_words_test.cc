#include "extract/part_words.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace benchleaf::extract {
namespace {

bool TellsCapacitors(const std::string& word) {
  const auto classes = ClassesOfWord(word, ShippedRules().tables());
  return std::find(classes.begin(), classes.end(), "C") != classes.end();
}

TEST(ClassesOfWord, AreThoseOfTheWordItsPluralAndAMisreadOne) {
  EXPECT_TRUE(TellsCapacitors("CAPACITOR"));
  EXPECT_TRUE(TellsCapacitors("Capacitors,"));
  for (int time = 0; time < 2; ++time) {
    EXPECT_TRUE(TellsCapacitors("CAPACIT0R")) << "each time it is asked";
    EXPECT_TRUE(ClassesOfWord("HORIZONTAL", ShippedRules().tables()).empty());
  }
}

}  // namespace
}  // namespace benchleaf::extract
