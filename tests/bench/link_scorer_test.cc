#include "bench/link_scorer.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf::bench {
namespace {

constexpr FractionBox kRow{0.1, 0.3, 0.5, 0.02};

FractionBox Place(int number) { return {0.1 * number, 0.1, 0.05, 0.02}; }

PageAsItIs Drawing(const std::vector<std::string>& designators, const std::string& assembly = {}) {
  PageAsItIs page;
  page.assembly = assembly;
  page.truth.kind = "schematic";
  for (const std::string& designator : designators) {
    page.truth.terms.push_back({"designator", designator, Place(static_cast<int>(page.truth.terms.size()) + 1), 0});
  }
  return page;
}

PageAsItIs List(const std::vector<std::pair<std::string, std::string>>& rows) {
  PageAsItIs page;
  page.truth.kind = "parts list";
  for (const auto& [assembly, designator] : rows) {
    page.truth.entries.push_back({designator, assembly, "", "", "", kRow});
  }
  return page;
}

// The manual as it is read without fault, and no links yet.
ManualRecord ReadAs(const std::vector<PageAsItIs>& pages) {
  ManualRecord manual;
  for (const PageAsItIs& page : pages) {
    PageRecord record;
    for (const scanmaker::TruthTerm& term : page.truth.terms) {
      Sighting sighting;
      sighting.text = term.text;
      sighting.box = term.box;
      record.sightings.push_back(sighting);
    }
    for (const scanmaker::TruthEntry& row : page.truth.entries) {
      Entry entry;
      entry.designator = row.designator;
      entry.assembly = row.assembly;
      entry.box = row.box;
      record.entries.push_back(entry);
    }
    manual.pages.push_back(record);
  }
  return manual;
}

TEST(LinkScorer, WantsEveryPlaceOfARow) {
  EXPECT_EQ(TrueLinks({Drawing({"C1", "C2", "C1"}), List({{"", "C1"}, {"", "C3"}})}).size(), 2U);
}

TEST(LinkScorer, WantsSectionsOfAPartThatIsListedWhole) {
  EXPECT_EQ(TrueLinks({Drawing({"C1A", "C1B"}), List({{"", "C1"}})}).size(), 2U);
  EXPECT_EQ(TrueLinks({Drawing({"C1A", "C1B"}), List({{"", "C1"}, {"", "C1A"}})}).size(), 2U) << "C1A by its own row";
}

TEST(LinkScorer, WantsOnlyTheRowsOfTheDrawingsAssembly) {
  const auto links = TrueLinks({Drawing({"R1"}, "A2"), List({{"A1", "R1"}, {"A2", "R1"}})});
  ASSERT_EQ(links.size(), 1U);
  EXPECT_EQ(links[0].entry, 1U);
}

TEST(LinkScorer, TakesNoTextForAPlaceOfParts) {
  PageAsItIs text = Drawing({"R1"});
  text.truth.kind = "text";
  EXPECT_TRUE(TrueLinks({text, List({{"", "R1"}})}).empty());
}

TEST(LinkScorer, TellsRightFromWrong) {
  const std::vector<PageAsItIs> pages = {Drawing({"R1", "R2"}, "A1"), List({{"A1", "R1"}, {"A2", "R1"}})};
  ManualRecord manual = ReadAs(pages);
  manual.links = {{1, 0, 0, 0, 0.9, ""}, {1, 1, 0, 0, 0.9, ""}, {1, 0, 0, 1, 0.9, ""}, {1, 0, 0, 0, 0.9, ""}};
  const JudgedLinks judged = JudgeLinks(pages, manual);
  EXPECT_EQ(judged.right, (std::vector<bool>{true, false, false, false}))
      << "right; row of another assembly; another part; a second time";
  EXPECT_EQ(judged.found, (std::vector<bool>{true}));
}

TEST(LinkScorer, AsksForTheRightPlace) {
  const std::vector<PageAsItIs> pages = {Drawing({"R1"}), List({{"", "R1"}})};
  ManualRecord manual = ReadAs(pages);
  manual.links = {{1, 0, 0, 0, 0.9, ""}};
  manual.pages[0].sightings[0].box = Place(5);
  EXPECT_EQ(JudgeLinks(pages, manual).right, (std::vector<bool>{false}));
  manual.pages[0].sightings[0].box = pages[0].truth.terms[0].box;
  manual.pages[0].sightings[0].text = "R7";
  EXPECT_EQ(JudgeLinks(pages, manual).right, (std::vector<bool>{false})) << "misread, and yet linked";
}

TEST(LinkScorer, TakesAPrefixedAssemblyForTheDrawings) {
  const std::vector<PageAsItIs> pages = {Drawing({"R1"}, "A4"), List({{"A4", "R1"}})};
  ManualRecord manual = ReadAs(pages);
  manual.pages[0].sightings[0].text = "A4R1";
  manual.links = {{1, 0, 0, 0, 0.9, ""}};
  EXPECT_EQ(JudgeLinks(pages, manual).right, (std::vector<bool>{true}));
}

}  // namespace
}  // namespace benchleaf::bench
