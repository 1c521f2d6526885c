#include "scan-maker/page_trait.h"

#include "scan-maker/page_surroundings.h"
#include "scan-maker/sheet.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <set>
#include <stdexcept>
#include <string>

namespace benchleaf::scanmaker {
namespace {

// Designators all over a small page.
MadePage Page() {
  Sheet sheet(1500, 1200);
  TextStyle style;
  style.cap_height_px = 30;
  style.stroke_px = 5;
  int number = 10;
  for (int y = 200; y < 1150; y += 150) {
    for (int x = 250; x < 1300; x += 250) {
      sheet.Put(x, y, TermToken("designator", "R" + std::to_string(number++)), style);
    }
  }
  return sheet.Take("schematic", "7");
}

// Whether the scan is darker in the box than around it.
bool HoldsInk(const ScannedPage& scan, const FractionBox& box) {
  const int left = static_cast<int>(box.x * scan.image.width);
  const int right = static_cast<int>((box.x + box.width) * scan.image.width);
  int darkest = 255;
  int lightest = 0;
  for (int y = static_cast<int>(box.y * scan.image.height); y < (box.y + box.height) * scan.image.height; ++y) {
    const auto [low, high] = std::minmax_element(scan.image.row(y) + left, scan.image.row(y) + right);
    darkest = std::min<int>(darkest, *low);
    lightest = std::max<int>(lightest, *high);
  }
  return lightest - darkest > 60;
}

TEST(PageTraitTest, EveryTraitHasANameOfItsOwn) {
  std::set<std::string_view> names;
  for (const PageTrait trait : AllPageTraits()) names.insert(Name(trait));
  EXPECT_EQ(names.size(), AllPageTraits().size());
}

TEST(PageTraitTest, TheTruthGoesAlong) {
  const MadePage page = Page();
  for (const PageTrait trait : AllPageTraits()) {
    const ScannedPage scan = ScanWithTrait(page, Grade::kMedium, trait, 3);
    EXPECT_GE(scan.truth.terms.size(), page.terms.size() - 6) << Name(trait);
    for (const TruthTerm& term : scan.truth.terms) {
      EXPECT_TRUE(HoldsInk(scan, term.box)) << Name(trait) << ": " << term.text;
    }
  }
}

TEST(PageTraitTest, EveryTraitChangesTheScanTheSameWayEachTime) {
  const MadePage page = Page();
  const ScannedPage plain = DegradeMade(page, Grade::kMedium, 3);
  for (const PageTrait trait : AllPageTraits()) {
    const ScannedPage scan = ScanWithTrait(page, Grade::kMedium, trait, 3);
    EXPECT_EQ(scan.image, ScanWithTrait(page, Grade::kMedium, trait, 3).image) << Name(trait);
    const bool same = scan.image == plain.image && scan.dpi == plain.dpi;
    EXPECT_EQ(same, trait == PageTrait::kNone) << Name(trait);
  }
}

TEST(PageTraitTest, SeveralTraitsGoTogetherInAnyOrder) {
  const MadePage page = Page();
  const std::array both = {PageTrait::kSkew3, PageTrait::kPale};
  const std::array turned_round = {PageTrait::kPale, PageTrait::kSkew3};
  const ScannedPage scan = ScanWithTraits(page, Grade::kMedium, both, 3);
  EXPECT_EQ(scan.image, ScanWithTraits(page, Grade::kMedium, turned_round, 3).image);
  EXPECT_NE(scan.image, ScanWithTrait(page, Grade::kMedium, PageTrait::kSkew3, 3).image);
  EXPECT_NE(scan.image, ScanWithTrait(page, Grade::kMedium, PageTrait::kPale, 3).image);
}

TEST(PageTraitTest, APageOnItsSideHasNoNeighbour) {
  const std::array traits = {PageTrait::kLaid90, PageTrait::kNeighbour};
  EXPECT_THROW(ScanWithTraits(Page(), Grade::kMedium, traits, 3), std::invalid_argument);
}

TEST(PageSurroundingsTest, TwoPagesStandSideBySide) {
  const MadePage left = Page();
  MadePage right = Page();
  right.printed_number = "8";
  const MadePage both = TwoUp(left, right);
  EXPECT_EQ(both.image.width, 3000);
  EXPECT_EQ(both.printed_number, "7, 8");
  ASSERT_EQ(both.terms.size(), 2 * left.terms.size());
  EXPECT_EQ(both.terms.back().box.x, left.terms.back().box.x + 1500);
  EXPECT_EQ(both.terms.back().text, left.terms.back().text);
}

TEST(PageSurroundingsTest, HalvesBothShowTheMiddleAndCutItsWords) {
  const MadePage page = Page();
  const auto [left, right] = Halves(page, 0.2);
  EXPECT_EQ(left.image.width, 900);
  EXPECT_EQ(right.image.width, 900);
  EXPECT_GT(left.terms.size() + right.terms.size(), page.terms.size()) << "the middle column stands on both";
  for (const MadeTerm& term : right.terms) {
    EXPECT_GE(term.box.x, 0) << term.text;
    EXPECT_LE(term.box.right(), 900) << term.text;
  }
}

TEST(PageSurroundingsTest, WhatAHoleTookIsNoLongerTrue) {
  Sheet sheet(1500, 1200);
  sheet.Put(120, 610, TermToken("designator", "R1"), {});
  sheet.Put(700, 610, TermToken("designator", "R2"), {});
  const MadePage holed = WithPunchHoles(sheet.Take("schematic", ""));
  ASSERT_EQ(holed.terms.size(), 1U);
  EXPECT_EQ(holed.terms.front().text, "R2");
}

}  // namespace
}  // namespace benchleaf::scanmaker
