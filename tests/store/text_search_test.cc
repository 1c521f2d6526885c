#include "store/test_index.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using TextSearchTest = IndexTest;
using testing::ElementsAre;
using testing::IsEmpty;

// A manual of one set; each page's words stand in a row, 100 px apart.
ManualRecord Pages(const std::string& set, const std::vector<std::vector<std::string>>& pages) {
  ManualRecord manual;
  manual.set = set;
  manual.manual = "service";
  for (const std::vector<std::string>& words : pages) {
    const int number = static_cast<int>(manual.pages.size()) + 1;
    manual.pages.push_back(MakePage(set + ".pdf", number, PageKind::kText));
    for (const std::string& word : words) {
      const int x = 100 * static_cast<int>(manual.pages.back().reading.words.size());
      manual.pages.back().reading.words.push_back(MakeWord(word, x));
    }
  }
  return manual;
}

// "set page word" of each answer, in order.
std::vector<std::string> Told(const std::vector<FoundSighting>& found) {
  std::vector<std::string> told;
  for (const FoundSighting& one : found) {
    EXPECT_EQ(one.match, Match::kText);
    EXPECT_EQ(one.kind(), std::nullopt);
    told.push_back(one.place.set + ' ' + std::to_string(one.place.page) + ' ' + one.sighting.read);
  }
  return told;
}

TEST_F(TextSearchTest, FindsPagesThatHoldEveryWord) {
  Store(Pages("A", {{"Remove", "the", "Chassis"}, {"the", "cabinet"}, {"chassis,", "cabinet"}}));
  const auto reader = Reader();
  const auto ask = [&](const char* words) { return Told(reader->Find({words, "", {}, 10}).value()); };
  EXPECT_THAT(ask("chassis"), ElementsAre("A 1 Chassis", "A 3 chassis,"));
  EXPECT_THAT(ask("CABINET the"), ElementsAre("A 2 the"));
  EXPECT_THAT(ask("chassis knob"), IsEmpty());
  EXPECT_THAT(ask("chass"), IsEmpty());
  EXPECT_THAT(ask("..."), IsEmpty()) << "no word at all";
}

TEST_F(TextSearchTest, AStarStandsForAnyEnding) {
  Store(Pages("A", {{"capacitor"}, {"CAPACITANCE"}, {"cap"}, {"escape"}}));
  EXPECT_THAT(Told(Reader()->Find({"capac*", "", {}, 10}).value()), ElementsAre("A 1 capacitor", "A 2 CAPACITANCE"));
  EXPECT_THAT(Told(Reader()->Find({"*", "", {}, 10}).value()), IsEmpty());
}

TEST_F(TextSearchTest, TakesXapiansQuerySyntax) {
  Store(Pages("A", {{"horizontal", "hold"}, {"vertical", "hold"}, {"hold", "down"}, {"vertical", "size"}}));
  const auto reader = Reader();
  const auto ask = [&](const char* words) { return Told(reader->Find({words, "", {}, 10}).value()); };
  EXPECT_THAT(ask("hold -horizontal"), ElementsAre("A 2 hold", "A 3 hold"));
  EXPECT_THAT(ask("hold NOT (horizontal OR vertical)"), ElementsAre("A 3 hold"));
  EXPECT_THAT(ask("horizontal OR size"), testing::UnorderedElementsAre("A 1 horizontal", "A 4 size"));
  EXPECT_THAT(ask("(vert* OR horiz*) AND hold"), testing::UnorderedElementsAre("A 1 hold", "A 2 vertical"));
  EXPECT_THAT(ask("\"vertical hold\""), ElementsAre("A 2 vertical"));
  EXPECT_THAT(ask("hold AND"), testing::UnorderedElementsAre("A 1 hold", "A 2 hold", "A 3 hold"))
      << "no query, but words";
}

TEST_F(TextSearchTest, TheSpotIsWhereTheWordsStandTogether) {
  Store(Pages("A", {{"filter", "of", "the", "tube", "set", "line", "filter", "choke"}}));
  const auto found = Reader()->Find({"filter choke", "", {}, 10}).value();
  ASSERT_EQ(found.size(), 1U) << "one answer a page";
  EXPECT_EQ(found[0].sighting.read, "filter");
  EXPECT_EQ(found[0].sighting.text, "FILTER");
  EXPECT_NEAR(found[0].sighting.box.x, 600.0 / 2000, 1e-9) << "the second one, before the choke";
  EXPECT_NEAR(found[0].sighting.box.width, 60.0 / 2000, 1e-9);
  EXPECT_EQ(found[0].sighting.confidence, 0.8);
}

TEST_F(TextSearchTest, WordsAreSplitAsInTheIndex) {
  Store(Pages("A", {{"lamp"}, {"amp"}, {"pre-amp/mixer"}}));
  EXPECT_THAT(Told(Reader()->Find({"amp", "", {}, 10}).value()), ElementsAre("A 2 amp", "A 3 pre-amp/mixer"));
  EXPECT_THAT(Told(Reader()->Find({"pre-amp", "", {}, 10}).value()), ElementsAre("A 3 pre-amp/mixer"));
}

TEST_F(TextSearchTest, MostMentionsComeFirstThenPlace) {
  Store(Pages("B", {{"hum"}, {"hum", "hum", "hum"}}), Pages("A", {{"hum", "and", "a", "long", "page", "besides"}}));
  const auto reader = Reader();
  EXPECT_THAT(Told(reader->Find({"hum", "", {}, 10}).value()), ElementsAre("B 2 hum", "A 1 hum", "B 1 hum"));
  EXPECT_THAT(Told(reader->Find({"hum", "", {}, 2}).value()), ElementsAre("B 2 hum", "A 1 hum"));
  EXPECT_THAT(Told(reader->Find({"hum", "B", {}, 10}).value()), ElementsAre("B 2 hum", "B 1 hum"));
  EXPECT_THAT(reader->Find({"hum", "", PageKind::kSchematic, 10}).value(), IsEmpty());
}

TEST_F(TextSearchTest, PagesWithABetterAnswerAreNotToldAgain) {
  ManualRecord manual = Pages("A", {{"C112"}, {"C112"}});
  manual.pages[0].sightings = {MakeSighting(TermKind::kDesignator, "C112")};
  Store(manual);
  const auto found = Reader()->Find({"C112", "", {}, 10}).value();
  ASSERT_EQ(found.size(), 2U);
  EXPECT_EQ(found[0].match, Match::kExact);
  EXPECT_EQ(found[1].match, Match::kLookAlike);
  EXPECT_EQ(found[1].place.page, 2);
}

TEST_F(TextSearchTest, BoxesAndTurnsAreThoseOfTheScan) {
  ManualRecord manual = Pages("A", {{"hum"}});
  PageFrame& frame = manual.pages[0].reading.frame;
  frame.scan_width = 1000;
  frame.scan_height = 2000;  // lies on its side: turned clockwise by 90 degrees it is upright
  frame.orientation = 90;
  manual.pages[0].reading.words[0].box = {0, 0, 200, 20};
  Store(manual);
  const auto found = Reader()->Find({"hum", "", {}, 10}).value();
  ASSERT_EQ(found.size(), 1U);
  // The upright page's top left corner is the scan's bottom left; a word 200 px long along the top stands there.
  EXPECT_NEAR(found[0].sighting.box.x, 0, 1e-9);
  EXPECT_NEAR(found[0].sighting.box.y, 0.9, 1e-9);
  EXPECT_NEAR(found[0].sighting.box.width, 0.02, 1e-9);
  EXPECT_NEAR(found[0].sighting.box.height, 0.1, 1e-9);
  EXPECT_EQ(found[0].sighting.turn, 270) << "on the scan it reads from bottom to top";
}

}  // namespace
}  // namespace benchleaf
