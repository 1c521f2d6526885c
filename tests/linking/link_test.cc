#include "benchleaf/linking/link.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

Sighting Seen(const std::string& text, double x, double y, const std::string& assembly = {},
              TermKind kind = TermKind::kDesignator) {
  Sighting sighting;
  sighting.kind = kind;
  sighting.text = text;
  sighting.read = text;
  sighting.box = {x, y, 0.008 * static_cast<double>(text.size()), 0.01};
  sighting.confidence = 0.9;
  sighting.assembly = assembly;
  return sighting;
}

Sighting Value(const std::string& text, double x, double y) { return Seen(text, x, y, {}, TermKind::kValue); }

Entry Listed(const std::string& designator, const std::string& assembly = {}, const std::string& value = {}) {
  Entry entry;
  entry.designator = designator;
  entry.assembly = assembly;
  entry.value = value;
  entry.confidence = 0.9;
  return entry;
}

LinkPage Schematic(std::vector<Sighting> sightings) { return {PageKind::kSchematic, std::move(sightings), {}}; }
LinkPage List(std::vector<Entry> entries) { return {PageKind::kPartsList, {}, std::move(entries)}; }

// "entry page/entry > page/sighting reason", one a link.
std::vector<std::string> Told(const std::vector<LinkPage>& pages) {
  std::vector<std::string> told;
  for (const Link& link : LinkManual(pages)) {
    told.push_back(std::to_string(link.entry_page) + "/" + std::to_string(link.entry) + " > " +
                   std::to_string(link.seen_page) + "/" + std::to_string(link.sighting) + " " + link.reason);
  }
  return told;
}

using Strings = std::vector<std::string>;

TEST(LinkManual, TiesAnEntryToEverySheetThatShowsIt) {
  EXPECT_EQ(Told({Schematic({Seen("C112", 0.1, 0.1)}), Schematic({Seen("R1", 0.1, 0.1), Seen("C112", 0.5, 0.5)}),
                  Schematic({Seen("C112", 0.2, 0.2)}), List({Listed("C112")})}),
            (Strings{"3/0 > 0/0 only candidate", "3/0 > 1/1 only candidate", "3/0 > 2/0 only candidate"}));
}

TEST(LinkManual, LooksOnlyAtPagesThatShowParts) {
  const std::vector<Sighting> seen = {Seen("C1", 0.1, 0.1), Seen("V1", 0.3, 0.3)};
  const auto links = [&](PageKind kind) { return Told({{kind, seen, {}}, List({Listed("C1"), Listed("V1")})}); };
  EXPECT_EQ(links(PageKind::kPartsLocator).size(), 2U);
  EXPECT_EQ(links(PageKind::kOther).size(), 2U) << "a drawing that is too badly read to be told";
  EXPECT_EQ(links(PageKind::kTubeLayout), (Strings{"1/1 > 0/1 only candidate"})) << "a tube layout shows tubes";
  for (const PageKind kind : {PageKind::kText, PageKind::kPartsList, PageKind::kBlockDiagram, PageKind::kAlignment}) {
    EXPECT_TRUE(links(kind).empty()) << Name(kind);
  }
}

TEST(LinkManual, KeepsAssembliesApart) {
  // ASME Y14.44: numbers begin anew in every assembly.
  EXPECT_EQ(Told({Schematic({Seen("R1", 0.1, 0.1, "A4"), Seen("A5R1", 0.3, 0.3)}),
                  List({Listed("R1", "A4"), Listed("R1", "A5"), Listed("A5R1")})}),
            (Strings{"1/0 > 0/0 same assembly", "1/1 > 0/1 same assembly", "1/2 > 0/1 same assembly"}));
}

TEST(LinkManual, NamesEveryCandidateWhenTheDrawingDoesNotSayWhich) {
  const std::vector<LinkPage> pages = {Schematic({Seen("R1", 0.1, 0.1)}),
                                       List({Listed("R1", "A4"), Listed("R1", "A5")})};
  EXPECT_EQ(Told(pages), (Strings{"1/0 > 0/0 one of 2 candidates", "1/1 > 0/0 one of 2 candidates"}));
  EXPECT_LT(LinkManual(pages)[0].confidence, 0.5);
}

TEST(LinkManual, LetsTheValueBesideTheSymbolDecide) {
  const auto links = LinkManual({Schematic({Seen("R1", 0.1, 0.1), Value("470K", 0.1, 0.115), Seen("C9", 0.1, 0.4)}),
                                 List({Listed("R1", "A4", "100K"), Listed("R1", "A5", "470K")})});
  ASSERT_EQ(links.size(), 1U) << "a row of another value is no candidate beside one that agrees";
  EXPECT_EQ(links[0].entry, 1U);
  EXPECT_EQ(links[0].reason, "value agrees");
}

TEST(LinkManual, KeepsRowsThatDifferWhereNoneAgrees) {
  EXPECT_EQ(Told({Schematic({Seen("R1", 0.1, 0.1), Value("22K", 0.1, 0.115)}),
                  List({Listed("R1", "A4", "100K"), Listed("R1", "A5", "470K")})}),
            (Strings{"1/0 > 0/0 one of 2 candidates, value differs", "1/1 > 0/0 one of 2 candidates, value differs"}));
}

// Four resistors of one drawing that does not name its assembly, with their values.
LinkPage Untitled(const std::vector<std::string>& values) {
  LinkPage page = Schematic({});
  for (std::size_t i = 0; i < values.size(); ++i) {
    const double x = 0.1 + 0.2 * static_cast<double>(i);
    page.sightings.push_back(Seen("R" + std::to_string(i + 1), x, 0.1));
    page.sightings.push_back(Value(values[i], x, 0.115));
  }
  return page;
}

TEST(LinkManual, TellsTheAssemblyOfADrawingByItsParts) {
  const LinkPage list = List({Listed("R1", "A4", "1K"), Listed("R2", "A4", "2.2K"), Listed("R3", "A4", "3.3K"),
                              Listed("R4", "A4", "4.7K"), Listed("R1", "A5", "10K"), Listed("R2", "A5", "22K"),
                              Listed("R3", "A5", "33K"), Listed("R4", "A5", "47K")});
  const auto links = LinkManual({Untitled({"10K", "22K", "33K", "68K"}), list});
  ASSERT_EQ(links.size(), 4U);
  EXPECT_EQ(links[0].entry, 4U);
  EXPECT_EQ(links[0].reason, "the drawing shows the parts of A5, value agrees");
  EXPECT_EQ(links[3].entry, 7U);
  EXPECT_EQ(links[3].reason, "the drawing shows the parts of A5, value differs");
}

TEST(LinkManual, LeavesTheAssemblyOpenWhereADrawingMayBeAnyOrSeveral) {
  const LinkPage list = List({Listed("R1", "A4", "1K"), Listed("R2", "A4", "2.2K"), Listed("R1", "A5", "1K"),
                              Listed("R2", "A5", "2.2K"), Listed("R3", "A5")});
  EXPECT_EQ(LinkManual({Untitled({"1K", "2.2K"}), list}).size(), 4U) << "both assemblies fit";
  LinkPage both = Untitled({"1K", "2.2K"});
  const LinkPage other = Untitled({"1K", "2.2K"});
  both.sightings.insert(both.sightings.end(), other.sightings.begin(), other.sightings.end());
  EXPECT_EQ(LinkManual({both, list}).size(), 8U) << "every designator stands on it twice";
}

TEST(LinkManual, ComparesValuesBySize) {
  const struct {
    const char* designator;
    const char* listed;
    const char* drawn;
    const char* reason;
  } kCases[] = {
      {"C1", ".05MFD", "50NF", "only candidate, value agrees"},
      {"C1", ".05MFD", ".05", "only candidate, value agrees"},  // a bare number beside a capacitor
      {"C1", "250MMF", "250UUF", "only candidate, value agrees"},
      {"R1", "4700OHM", "4K7", "only candidate, value agrees"},  // IEC 60062
      {"R1", "470K", "47K", "only candidate, value differs"},
      {"R1", "470K", "600V", "only candidate"},  // another quantity says nothing
      {"V1", "", "470K", "only candidate"},
  };
  for (const auto& one : kCases) {
    const auto links = LinkManual({Schematic({Seen(one.designator, 0.1, 0.1), Value(one.drawn, 0.1, 0.115)}),
                                   List({Listed(one.designator, {}, one.listed)})});
    ASSERT_EQ(links.size(), 1U);
    EXPECT_EQ(links[0].reason, one.reason) << one.listed << " and " << one.drawn;
  }
}

TEST(LinkManual, ABadlyReadValueCanAgreeButNotContradict) {
  const auto reason = [](const char* drawn) {
    Sighting value = Value(drawn, 0.1, 0.115);
    value.confidence = 0.4;
    return LinkManual({Schematic({Seen("R1", 0.1, 0.1), value}), List({Listed("R1", {}, "470K")})}).at(0).reason;
  };
  EXPECT_EQ(reason("470K"), "only candidate, value agrees");
  EXPECT_EQ(reason("170K"), "only candidate");
}

TEST(LinkManual, GivesAValueToTheNearestDesignatorOnly) {
  const auto links = LinkManual({Schematic({Seen("R1", 0.1, 0.1), Seen("R2", 0.1, 0.13), Value("470K", 0.1, 0.142)}),
                                 List({Listed("R1", {}, "470K"), Listed("R2", {}, "470K")})});
  ASSERT_EQ(links.size(), 2U);
  EXPECT_EQ(links[0].reason, "only candidate");
  EXPECT_EQ(links[1].reason, "only candidate, value agrees");
}

TEST(LinkManual, TiesAWholePartToItsSections) {
  const auto links = LinkManual({Schematic({Seen("C1A", 0.1, 0.1), Seen("C1B", 0.5, 0.1)}), List({Listed("C1")})});
  EXPECT_EQ(links.size(), 2U);
  EXPECT_EQ(Told({Schematic({Seen("C1A", 0.1, 0.1)}), List({Listed("C1"), Listed("C1A")})}),
            (Strings{"1/1 > 0/0 only candidate"}))
      << "a section that is listed itself is not the whole part";
}

TEST(LinkManual, IsAsSureAsItsParts) {
  std::vector<LinkPage> pages = {Schematic({Seen("C1", 0.1, 0.1)}), List({Listed("C1")})};
  const double before = LinkManual(pages)[0].confidence;
  EXPECT_GT(before, 0.7);
  pages[1].entries[0].confidence = 0.45;
  EXPECT_NEAR(LinkManual(pages)[0].confidence, before / 2, 1e-9);
}

Entry Item(const std::string& item, const std::string& assembly = {}) {
  Entry entry = Listed("", assembly);
  entry.item = item;
  return entry;
}

Sighting Callout(const std::string& item, double y) { return Seen(item, 0.1, y, {}, TermKind::kItem); }

TEST(LinkManual, TiesItemsToTheNumbersThatADrawingCallsOut) {
  EXPECT_EQ(Told({Schematic({Callout("2", 0.1), Callout("1", 0.2), Seen("R1", 0.5, 0.5)}),
                  List({Item("1"), Item("2"), Item("3")})}),
            (Strings{"1/0 > 0/1 only candidate", "1/1 > 0/0 only candidate"}));
}

TEST(LinkManual, TellsByTheNumbersWhichListADrawingCallsOut) {
  const LinkPage lists = List({Item("1"), Item("2"), Item("3"), Item("1", "A2"), Item("2", "A2"), Item("3", "A2"),
                               Item("4", "A2"), Item("5", "A2"), Item("6", "A2")});
  EXPECT_EQ(Told({Schematic({Callout("1", 0.1), Callout("2", 0.2), Callout("3", 0.3)}), lists}),
            (Strings{"1/0 > 0/0 the drawing calls out the items of this list",
                     "1/1 > 0/1 the drawing calls out the items of this list",
                     "1/2 > 0/2 the drawing calls out the items of this list"}));
  const LinkPage alike = List({Item("1"), Item("2"), Item("1"), Item("2")});
  EXPECT_EQ(Told({Schematic({Callout("1", 0.1), Callout("2", 0.2)}), alike}),
            (Strings{"1/0 > 0/0 one of 2 candidates", "1/1 > 0/1 one of 2 candidates", "1/2 > 0/0 one of 2 candidates",
                     "1/3 > 0/1 one of 2 candidates"}));
}

TEST(LinkManual, IsSoonDoneWithADesignatorThatStandsThousandsOfTimes) {
  constexpr std::size_t kTimes = 20000;
  std::vector<Entry> rows;
  std::vector<Sighting> places;
  for (std::size_t i = 0; i < kTimes; ++i) {
    rows.push_back(Listed("R1", "A" + std::to_string(i % 7), "470K"));
    places.push_back(Seen("R1", 0.1, static_cast<double>(i) / kTimes));
  }
  const auto links = LinkManual({Schematic(places), List(rows)});
  EXPECT_GE(links.size(), kTimes) << "every row has a place";
  EXPECT_LT(links.size(), 100000U) << "and not every place";
}

TEST(LinkManual, TakesNothing) {
  EXPECT_TRUE(LinkManual({}).empty());
  EXPECT_TRUE(LinkManual({List({Listed("")})}).empty());
  EXPECT_TRUE(LinkManual({Schematic({Seen("C1", 0, 0)})}).empty());
}

}  // namespace
}  // namespace benchleaf
