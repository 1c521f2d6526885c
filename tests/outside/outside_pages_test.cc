#include "outside/outside_pages.h"

#include "outside/kicad_sheet.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstddef>
#include <fstream>
#include <set>
#include <stdexcept>
#include <string>

namespace benchleaf::outside {
namespace {

// Counts visible references without the parser: properties of placed symbols stand four blanks deep, and unless both
// brackets close in the same line, the next one has their effects. 0.254 mm, on one reference, is the size that is
// taken for no lettering.
int VisibleReferences(const std::filesystem::path& file) {
  std::ifstream stream(file);
  const std::string opening = "    (property \"Reference\" \"";
  int count = 0;
  for (std::string line; std::getline(stream, line);) {
    if (line.compare(0, opening.size(), opening) != 0) {
      continue;
    }
    const std::string name = line.substr(opening.size(), line.find('"', opening.size()) - opening.size());
    std::string effects;
    if (line.compare(line.size() - 2, 2, "))") != 0) {
      std::getline(stream, effects);
    }
    const std::size_t letters = name.find_first_of("0123456789");
    const bool plain = letters >= 1 && letters <= 3 &&
                       std::all_of(name.begin(), name.begin() + static_cast<std::ptrdiff_t>(letters),
                                   [](char c) { return c >= 'A' && c <= 'Z'; }) &&
                       name.find_first_not_of("0123456789", letters) == std::string::npos;
    if (plain && effects.find("hide") == std::string::npos && effects.find("size 0.254") == std::string::npos) {
      ++count;
    }
  }
  return count;
}

long Ink(const GreyImage& image, const Box& box) {
  long ink = 0;
  for (int y = box.y; y < box.bottom(); ++y) {
    ink += std::count_if(image.row(y) + box.x, image.row(y) + box.right(), [](int level) { return level < 128; });
  }
  return ink;
}

TEST(OutsidePagesTest, ShowEveryVisibleReferenceOnce) {
  for (const OutsidePage& page : OutsidePages()) {
    const scanmaker::MadePage made = Draw(page);
    const auto designators =
        std::count_if(made.terms.begin(), made.terms.end(), [](const auto& term) { return term.kind == "designator"; });
    EXPECT_EQ(designators, page.designators) << page.sheet;
    EXPECT_EQ(designators, VisibleReferences(KicadDemos() / page.sheet)) << page.sheet;
  }
}

TEST(OutsidePagesTest, HaveInkInEveryBoxOfTheTruth) {
  for (const OutsidePage& page : OutsidePages()) {
    const scanmaker::MadePage made = Draw(page);
    for (const scanmaker::MadeTerm& term : made.terms) {
      if (term.kind != "designator") {
        continue;
      }
      ASSERT_TRUE(term.box.x >= 0 && term.box.y >= 0 && term.box.right() <= made.image.width &&
                  term.box.bottom() <= made.image.height)
          << page.sheet << " " << term.text;
      const long area = static_cast<long>(term.box.width) * term.box.height;
      EXPECT_GT(Ink(made.image, term.box), area / 25) << page.sheet << " " << term.text;
    }
  }
}

TEST(OutsidePagesTest, AreTheSameEveryTime) {
  const OutsidePage& hand = OutsidePages()[1];
  ASSERT_EQ(hand.lettering, scanmaker::Lettering::kHand);
  EXPECT_EQ(Draw(hand).image, Draw(hand).image);
}

TEST(OutsidePagesTest, HoldNoProjectOutThatIsSeenElsewhere) {
  std::set<std::string> projects[2];
  std::set<std::uint64_t> seeds;
  for (const OutsidePage& page : OutsidePages()) {
    const std::string parent = std::filesystem::path(page.sheet).parent_path().string();
    projects[page.half == Half::kHeldOut].insert(parent);
    EXPECT_TRUE(seeds.insert(page.seed).second) << page.sheet;
  }
  for (const std::string& project : projects[0]) EXPECT_EQ(projects[1].count(project), 0U) << project;
}

TEST(KicadSheetTest, RefusesWhatIsNoSchematic) {
  EXPECT_THROW(DrawKicadSheet("/nowhere.kicad_sch", scanmaker::Lettering::kSimplex, 1), std::runtime_error);
  EXPECT_THROW(DrawKicadSheet(__FILE__, scanmaker::Lettering::kSimplex, 1), std::runtime_error);
}

}  // namespace
}  // namespace benchleaf::outside
