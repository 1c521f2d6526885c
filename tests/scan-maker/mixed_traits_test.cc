#include "scan-maker/mixed_traits.h"

#include "scan-maker/sheet.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace benchleaf::scanmaker {
namespace {

TEST(MixedTraitsTest, PagesHaveThreeForTheMostAndEachIsMet) {
  std::map<std::size_t, int> counts;
  std::set<PageTrait> met;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    const std::vector<PageTrait> traits = MixedTraits(seed);
    EXPECT_EQ(traits, MixedTraits(seed));
    ++counts[traits.size()];
    met.insert(traits.begin(), traits.end());
  }
  EXPECT_GT(counts[3], counts[1]);
  EXPECT_GT(counts[3], counts[5]);
  EXPECT_EQ(met.size(), 22U);
}

TEST(MixedTraitsTest, EveryMixtureCanBeScannedWithItsTruth) {
  Sheet sheet(900, 700);
  TextStyle style;
  style.cap_height_px = 30;
  for (int row = 0; row < 4; ++row) {
    sheet.Put(450, 200 + 100 * row, TermToken("designator", "R" + std::to_string(row + 1)), style);
  }
  const MadePage page = sheet.Take("schematic", "");
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const ScannedPage scan = ScanWithTraits(page, Grade::kMedium, MixedTraits(seed), seed);
    EXPECT_GE(scan.truth.terms.size(), 2U) << seed;
  }
}

}  // namespace
}  // namespace benchleaf::scanmaker
