#include "scan-maker/schematic_page.h"

#include "scan-maker/ink_test_support.h"

#include <gtest/gtest.h>

#include <set>

namespace benchleaf::scanmaker {
namespace {

SchematicResult Draw(const Circuit& circuit, std::uint64_t seed) {
  return MakeSchematicPage(circuit, {24, 15, "SCHEMATIC DIAGRAM", "SAMPLE", "9", {}},
                           UsualDrawingStyle(Lettering::kSimplex, seed), seed);
}

std::set<std::string> Drawn(const MadePage& page) {
  std::set<std::string> drawn;
  for (const MadeTerm& term : page.terms) {
    if (term.kind == "designator") {
      drawn.insert(term.text);
    }
  }
  return drawn;
}

TEST(SchematicPageTest, DrawsEveryListedPartOrItsSections) {
  for (const std::uint64_t seed : {1U, 2U, 3U}) {
    SCOPED_TRACE(seed);
    const Circuit circuit = RandomCircuit(14, seed);
    const SchematicResult result = Draw(circuit, seed);
    ASSERT_EQ(result.drawn, circuit.stages.size());
    const std::set<std::string> drawn = Drawn(result.page);
    for (const Part& part : ListedParts(circuit)) {
      const bool whole = drawn.count(part.designator) != 0;
      const bool section = drawn.count(part.designator + "A") != 0 || drawn.count(part.designator + "B") != 0;
      EXPECT_TRUE(whole || section) << part.designator;
    }
  }
}

TEST(SchematicPageTest, EveryTermHoldsInk) {
  const MadePage page = Draw(RandomCircuit(14, 4), 4).page;
  ASSERT_GT(page.terms.size(), 100U);
  for (const MadeTerm& term : page.terms) {
    EXPECT_TRUE(HoldsInk(page.image, term.box)) << term.text;
  }
}

TEST(SchematicPageTest, LettersOfDifferentPartsRarelyOverlap) {
  const MadePage page = Draw(RandomCircuit(14, 6), 6).page;
  int overlaps = 0;
  for (std::size_t i = 0; i < page.terms.size(); ++i) {
    for (std::size_t j = i + 1; j < page.terms.size(); ++j) {
      overlaps += OverlapOfSmaller(page.terms[i].box, page.terms[j].box) > 0.1 ? 1 : 0;
    }
  }
  EXPECT_LE(overlaps, 2);
}

TEST(SchematicPageTest, TurnsSomeLetteringBothWays) {
  std::set<int> turns;
  for (const std::uint64_t seed : {1U, 2U, 3U}) {
    for (const MadeTerm& term : Draw(RandomCircuit(14, seed), seed).page.terms) {
      turns.insert(term.turn);
    }
  }
  EXPECT_EQ(turns, (std::set<int>{0, 90, 270}));
}

TEST(SchematicPageTest, SameSeedGivesSamePage) {
  const MadePage one = Draw(RandomCircuit(5, 8), 8).page;
  const MadePage two = Draw(RandomCircuit(5, 8), 8).page;
  EXPECT_EQ(one.image, two.image);
  ASSERT_EQ(one.terms.size(), two.terms.size());
}

TEST(SchematicPageTest, ShowsTheMisprintedValueWhereDrawingAndListDisagree) {
  Circuit circuit = RandomCircuit(3, 9);
  for (auto& [role, part] : circuit.stages.front().parts) {
    if (part.part_class == PartClass::kResistor) {
      part.drawn_value = "123K";
      break;
    }
  }
  bool seen = false;
  for (const MadeTerm& term : Draw(circuit, 9).page.terms) {
    seen = seen || (term.kind == "value" && term.text == "123K");
  }
  EXPECT_TRUE(seen);
}

TEST(SchematicPageTest, ReportsStagesThatFindNoRoom) {
  const Circuit circuit = RandomCircuit(30, 2);
  const SchematicResult result =
      MakeSchematicPage(circuit, {11, 8.5, "", "", "", {}}, UsualDrawingStyle(Lettering::kSimplex, 2), 2);
  EXPECT_LT(result.drawn, circuit.stages.size());
  EXPECT_GT(result.drawn, 0U);
}

}  // namespace
}  // namespace benchleaf::scanmaker
