#include "scan-maker/mixed_traits.h"

#include "scan-maker/sheet.h"

#include <gtest/gtest.h>

#include <array>
#include <map>
#include <set>

namespace benchleaf::scanmaker {
namespace {

constexpr std::array kForms = {PageForm::kDrawing, PageForm::kLocator, PageForm::kList};

TEST(MixedTraitsTest, MostPagesHaveSeveralTheSameEachTime) {
  for (const PageForm form : kForms) {
    int several = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
      const std::vector<PageTrait> traits = MixedTraits(form, seed);
      EXPECT_EQ(traits, MixedTraits(form, seed));
      EXPECT_LE(traits.size(), 6U);
      several += traits.size() >= 2 ? 1 : 0;
    }
    EXPECT_GT(several, 240);
  }
}

TEST(MixedTraitsTest, AFormHasNoTraitThatSuchPagesDoNotHave) {
  std::map<PageForm, std::set<PageTrait>> met;
  for (const PageForm form : kForms) {
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
      for (const PageTrait trait : MixedTraits(form, seed)) met[form].insert(trait);
    }
  }
  EXPECT_TRUE(met[PageForm::kLocator].contains(PageTrait::kLeaders));
  EXPECT_FALSE(met[PageForm::kDrawing].contains(PageTrait::kLeaders));
  EXPECT_FALSE(met[PageForm::kList].contains(PageTrait::kLeaders));
  EXPECT_TRUE(met[PageForm::kList].contains(PageTrait::kDashes));
  EXPECT_FALSE(met[PageForm::kLocator].contains(PageTrait::kDashes));
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
    const ScannedPage scan = ScanWithTraits(page, Grade::kMedium, MixedTraits(PageForm::kLocator, seed), seed);
    EXPECT_GE(scan.truth.terms.size(), 2U) << seed;
  }
}

}  // namespace
}  // namespace benchleaf::scanmaker
