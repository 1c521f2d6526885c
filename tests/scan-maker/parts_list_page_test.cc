#include "scan-maker/parts_list_page.h"

#include "scan-maker/ink_test_support.h"
#include "scan-maker/list_rows.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>

namespace benchleaf::scanmaker {
namespace {

using ::testing::ElementsAre;

Part Resistor(const std::string& designator, const std::string& value) {
  Part part;
  part.designator = designator;
  part.value = value;
  part.rating = "1/2 W";
  part.description = "Resistor, " + value + ", 1/2 W, 10%";
  part.part_number = "61-" + value;
  return part;
}

std::string Printed(const ListRow& row) {
  std::string printed;
  for (const Token& piece : row.designators) {
    printed += piece.text;
  }
  return printed;
}

TEST(ListRowsTest, GroupsLikePartsAsPrintedListsDo) {
  std::vector<Part> parts;
  for (const std::string designator : {"R1", "R2", "R3", "R4", "R7", "R9"}) {
    parts.push_back(Resistor(designator, "47K"));
  }
  parts.push_back(Resistor("R5", "10K"));
  struct Case {
    Grouping grouping;
    std::string printed;
  };
  const std::vector<Case> cases = {
      {Grouping::kNone, "R1"},
      {Grouping::kDashes, "R1-R4,7,9"},
      {Grouping::kThrough, "R1 thru R4,7,9"},
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.printed);
    ListLayout layout;
    layout.grouping = c.grouping;
    layout.class_headings = false;
    const std::vector<ListRow> rows = RowsOf({{"", "", parts}}, layout);
    EXPECT_EQ(Printed(rows.front()), c.printed);
    if (c.grouping != Grouping::kNone) {
      EXPECT_THAT(rows.front().parts, ElementsAre("R1", "R2", "R3", "R4", "R7", "R9"));
      EXPECT_EQ(rows.front().quantity, "6");
    }
  }
}

TEST(ListRowsTest, HeadsAssembliesAndClasses) {
  const std::vector<ListRow> rows = RowsOf({{"A4", "SWEEP", {Resistor("R1", "47K")}}}, ListLayout{});
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[0].heading, "ASSEMBLY A4  SWEEP");
  EXPECT_EQ(rows[1].heading, "RESISTORS");
  EXPECT_EQ(rows[2].assembly, "A4");
}

struct LayoutCase {
  std::string name;
  ListLayout layout;
  Lettering lettering;
};

class PartsListPageTest : public testing::TestWithParam<LayoutCase> {};

TEST_P(PartsListPageTest, TruthIsWhereTheInkIs) {
  const MadePage page = MakeRandomPartsListPage(GetParam().layout, GetParam().lettering, 12);
  EXPECT_EQ(page.kind, "parts list");
  ASSERT_GT(page.entries.size(), 25U);
  for (const MadeEntry& entry : page.entries) {
    EXPECT_TRUE(HoldsInk(page.image, entry.box)) << entry.designator;
    EXPECT_FALSE(entry.part_number.empty());
    EXPECT_EQ(entry.assembly.front(), 'A');
  }
  std::map<std::string, int> kinds;
  for (const MadeTerm& term : page.terms) {
    EXPECT_TRUE(HoldsInk(page.image, term.box)) << term.text;
    ++kinds[term.kind];
  }
  EXPECT_EQ(kinds["designator"], static_cast<int>(page.entries.size()));
  EXPECT_GT(kinds["part-number"], 20);
  EXPECT_GT(kinds["value"], 20);
}

TEST_P(PartsListPageTest, ColumnsDoNotRunIntoEachOther) {
  const MadePage page = MakeRandomPartsListPage(GetParam().layout, GetParam().lettering, 14);
  for (std::size_t i = 0; i < page.terms.size(); ++i) {
    for (std::size_t j = i + 1; j < page.terms.size(); ++j) {
      const MadeTerm& a = page.terms[i];
      const MadeTerm& b = page.terms[j];
      // A printed range is several terms at one place.
      if (a.box == b.box) {
        continue;
      }
      EXPECT_TRUE(Intersection(a.box, b.box).empty()) << a.text << " and " << b.text;
    }
  }
}

TEST_P(PartsListPageTest, SameSeedGivesSamePage) {
  const MadePage one = MakeRandomPartsListPage(GetParam().layout, GetParam().lettering, 3);
  EXPECT_EQ(one.image, MakeRandomPartsListPage(GetParam().layout, GetParam().lettering, 3).image);
  EXPECT_NE(one.image, MakeRandomPartsListPage(GetParam().layout, GetParam().lettering, 4).image);
}

INSTANTIATE_TEST_SUITE_P(
    Layouts, PartsListPageTest,
    testing::Values(
        LayoutCase{"Columns", {ListForm::kColumns, 1, Grouping::kNone, true, true, 1}, Lettering::kTypewriter},
        LayoutCase{"Leaders", {ListForm::kLeaders, 1, Grouping::kDashes, false, false, 0.8}, Lettering::kBook},
        LayoutCase{"RuledAbreast", {ListForm::kRuled, 2, Grouping::kThrough, true, true, 1}, Lettering::kBook},
        LayoutCase{"LeadersAbreast", {ListForm::kLeaders, 2, Grouping::kNone, false, true, 1}, Lettering::kTypewriter},
        LayoutCase{
            "DesignatorLast", {ListForm::kDesignatorLast, 1, Grouping::kDashes, true, true, 0.7}, Lettering::kSimplex},
        LayoutCase{"NumberFirst", {.form = ListForm::kNumberFirst, .sockets = true}, Lettering::kDrafting},
        LayoutCase{"ClassTables", {.abreast = 2, .class_tables = true, .text_above = true}, Lettering::kBook},
        LayoutCase{"Makers",
                   {.class_tables = true, .makers = 5, .wording = Wording::kTerse, .numbers = NumberForm::kSpaced},
                   Lettering::kBook},
        LayoutCase{"Spaced", {.lettered_sections = true, .spaced_designators = true}, Lettering::kTypewriter}),
    [](const testing::TestParamInfo<LayoutCase>& tested) { return tested.param.name; });

TEST(PartsListPagesTest, GoesOnOverPagesWithoutLosingAPart) {
  const std::vector<Part> parts = ListedParts(RandomCircuit(30, 5));
  PageFurniture furniture;
  furniture.prefix = "8-";
  furniture.number = 9;
  furniture.text = UsualTextStyle(Lettering::kTypewriter);
  const std::vector<MadePage> pages = MakePartsListPages({{"", "", parts}}, ListLayout{}, furniture);
  ASSERT_GT(pages.size(), 2U);
  EXPECT_EQ(pages[0].printed_number, "8-9");
  EXPECT_EQ(pages[1].printed_number, "8-10");
  std::size_t entries = 0;
  for (const MadePage& page : pages) {
    entries += page.entries.size();
  }
  EXPECT_EQ(entries, parts.size());
}

}  // namespace
}  // namespace benchleaf::scanmaker
