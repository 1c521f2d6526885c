#include "reader-training/line_crops.h"

#include "reader-training/practice_sheet.h"
#include "reader-training/practice_text.h"
#include "scan-maker/seeded_random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace benchleaf::training {
namespace {

TEST(PracticeText, HoldsNoSpacesAndVaries) {
  scanmaker::SeededRandom random(1);
  std::set<std::string> texts;
  for (int i = 0; i < 1000; ++i) {
    const std::string text = PracticeText(random);
    EXPECT_FALSE(text.empty());
    EXPECT_EQ(text.find(' '), std::string::npos) << text;
    texts.insert(text);
  }
  EXPECT_GT(texts.size(), 500U);
}

TEST(PracticeSheet, IsTheSameEveryTime) {
  const auto sheet = [] { return MakePracticeSheet({.lettering = scanmaker::Lettering::kHand}, 5).image; };
  EXPECT_EQ(sheet(), sheet());
}

TEST(LineCrops, CutMostTextsOfASheetAndKnowScraps) {
  const scanmaker::MadePage made = MakePracticeSheet({.lettering = scanmaker::Lettering::kSimplex}, 3);
  const std::vector<LineCrop> crops = CropsOf(scanmaker::DegradeMade(made, scanmaker::Grade::kMild, 3));
  const auto scraps = std::count_if(crops.begin(), crops.end(), [](const auto& crop) { return crop.text == kNoText; });
  EXPECT_GT(scraps, 0) << "of symbols";
  std::multiset<std::string> wanted;
  for (const scanmaker::MadeTerm& term : made.terms) wanted.insert(term.text);
  std::size_t found = 0;
  for (const LineCrop& crop : crops) {
    if (const auto at = wanted.find(crop.text.value_or("")); at != wanted.end()) {
      wanted.erase(at);
      ++found;
    }
  }
  EXPECT_GT(static_cast<double>(found), 0.75 * static_cast<double>(made.terms.size()));
}

}  // namespace
}  // namespace benchleaf::training
