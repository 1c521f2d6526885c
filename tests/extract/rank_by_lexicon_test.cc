#include "extract/page_text.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/extract/lexicon.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::Not;

// The pages of a manual, searched one by one.
class Manual {
 public:
  Manual& Add(LexiconPart part, PageReading reading, std::vector<Entry> entries = {}) {
    parts_.push_back(part);
    sightings_.push_back(ExtractSightings(reading, ShippedRules()));
    readings_.push_back(std::move(reading));
    entries_.push_back(std::move(entries));
    return *this;
  }

  std::vector<std::vector<Sighting>> Ranked() const {
    std::vector<LexiconPage> pages;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      pages.push_back({parts_[i], &readings_[i], &sightings_[i], &entries_[i]});
    }
    return RankByLexicon(pages, ShippedRules());
  }

  const std::vector<Sighting>& alone(std::size_t page) const { return sightings_[page]; }

 private:
  std::vector<LexiconPart> parts_;
  std::vector<PageReading> readings_;
  std::vector<std::vector<Sighting>> sightings_;
  std::vector<std::vector<Entry>> entries_;
};

PageReading Drawing(const std::vector<std::string>& lines, double confidence = 1) {
  PageReading reading = PageOf(lines, WordOrigin::kString);
  for (Word& word : reading.words) {
    word.confidence = confidence;
  }
  return reading;
}

// Entries as a list gives them: designators alone.
std::vector<Entry> Listed(const std::vector<std::string>& designators) {
  std::vector<Entry> entries;
  for (const std::string& designator : designators) {
    entries.push_back({designator, "", "", "", "1", "", {}, 0.95, ""});
  }
  return entries;
}

std::vector<std::string> Texts(const std::vector<Sighting>& sightings) {
  std::vector<std::string> texts;
  for (const Sighting& sighting : sightings) {
    texts.push_back(sighting.text);
  }
  return texts;
}

TEST(RankByLexicon, GivesABadlyReadWordTheOneTermThatTheListHasForIt) {
  const struct {
    const char* read;
    const char* term;  // empty for none
    const char* reason;
  } kCases[] = {
      {"Rt", "R1", "a stroke with a foot and a bar, in a class of many parts"},
      {"C4l", "C41", "a stroke"},
      {"Ft", "", "two characters of a class with one part are a scrap of the drawing"},
      {"56", "", "a figure where the class letter must stand"},
      {"V2", "V2", "right already"},
      {"CB", "C8", "B for 8"},
      {"6AUG", "6AU6", "a tube of the list"},
      {"R37", "R37", "not listed, but surely read: parts are left out of lists"},
      {"QQ", "", "looks like nothing in the list"},
      {"GRID", "", "a word"},
  };
  std::vector<std::string> parts = {"V2", "F1", "S6", "C41"};
  for (int number = 1; number <= 20; ++number) {
    if (number != 7) {
      parts.push_back("R" + std::to_string(number));
      parts.push_back("C" + std::to_string(number));
    }
  }
  const std::vector<Entry> listed = Listed(parts);
  for (const auto& one : kCases) {
    Manual manual;
    manual.Add(LexiconPart::kSource, PageOf({"V2 6AU6"}), listed);
    manual.Add(LexiconPart::kDrawing, Drawing({one.read}, 0.95));
    const std::vector<std::string> texts = Texts(manual.Ranked()[1]);
    if (*one.term == '\0') {
      EXPECT_THAT(texts, IsEmpty()) << one.read << ": " << one.reason;
    } else {
      EXPECT_THAT(texts, ElementsAre(one.term)) << one.read << ": " << one.reason;
    }
  }
}

TEST(RankByLexicon, TakesTheAlternativeThatTheListNames) {
  Manual manual;
  manual.Add(LexiconPart::kSource, PageOf({}), Listed({"R13"}));
  PageReading drawing = Drawing({"R73"}, 0.55);
  drawing.words[0].alternatives = {{"R13", 0.5}};
  manual.Add(LexiconPart::kDrawing, drawing);
  EXPECT_THAT(Texts(manual.Ranked()[1]), ElementsAre("R13"));
}

TEST(RankByLexicon, NeverReplacesASureReading) {
  Manual manual;
  manual.Add(LexiconPart::kSource, PageOf({}), Listed({"R13"}));
  PageReading drawing = Drawing({"R73"}, 0.97);
  drawing.words[0].alternatives = {{"R13", 0.9}};
  manual.Add(LexiconPart::kDrawing, drawing);
  EXPECT_THAT(Texts(manual.Ranked()[1]), ElementsAre("R73"));
}

TEST(RankByLexicon, LeavesTiesAlone) {
  Manual manual;
  manual.Add(LexiconPart::kSource, PageOf({}), Listed({"C6", "L6"}));
  PageReading drawing = Drawing({"?6"}, 0.6);
  drawing.words[0].alternatives = {{"C6", 0.5}, {"L6", 0.5}};
  manual.Add(LexiconPart::kDrawing, drawing);
  const std::vector<std::string> before = Texts(manual.alone(1));
  EXPECT_EQ(Texts(manual.Ranked()[1]), before);
}

TEST(RankByLexicon, FindsNothingWhereNothingWasRead) {
  Manual manual;
  manual.Add(LexiconPart::kSource, PageOf({}), Listed({"R1", "R2", "R3"}));
  manual.Add(LexiconPart::kDrawing, Drawing({}));
  EXPECT_THAT(manual.Ranked()[1], IsEmpty());
}

TEST(RankByLexicon, RaisesWhatAnotherPageNames) {
  Manual manual;
  manual.Add(LexiconPart::kSource, PageOf({}), Listed({"R13"}));
  manual.Add(LexiconPart::kDrawing, Drawing({"R13     R44"}, 0.7));
  const std::vector<Sighting> ranked = manual.Ranked()[1];
  ASSERT_EQ(ranked.size(), 2U);
  EXPECT_GT(ranked[0].confidence, manual.alone(1)[0].confidence);
  EXPECT_LE(ranked[0].confidence, 1);
  EXPECT_DOUBLE_EQ(ranked[1].confidence, manual.alone(1)[1].confidence) << "one entry is no complete list";
}

TEST(RankByLexicon, DoubtsWhatACompleteListDoesNotName) {
  const std::vector<std::string> parts = {"R1", "R2", "R3", "R4", "R5", "C1", "C2", "C3", "C4", "C5"};
  Manual manual;
  manual.Add(LexiconPart::kSource, PageOf({}), Listed(parts));
  std::vector<std::string> lines = parts;
  lines.emplace_back("R9");
  lines.emplace_back("Q5");
  PageReading drawing = Drawing(lines, 0.97);
  drawing.words[10].confidence = 0.4;
  manual.Add(LexiconPart::kDrawing, drawing);
  const std::vector<std::string> texts = Texts(manual.Ranked()[1]);
  EXPECT_THAT(texts, Not(Contains("R9"))) << "badly read and not listed";
  EXPECT_THAT(texts, Contains("Q5")) << "surely read";
}

TEST(RankByLexicon, TakesSectionsForNamedWithTheirPart) {
  Manual manual;
  manual.Add(LexiconPart::kSource, PageOf({}), Listed({"V3", "C1"}));
  manual.Add(LexiconPart::kDrawing, Drawing({"V3A     VaB"}, 0.6));
  const std::vector<Sighting> ranked = manual.Ranked()[1];
  ASSERT_FALSE(ranked.empty());
  EXPECT_EQ(ranked[0].text, "V3A");
  EXPECT_GT(ranked[0].confidence, manual.alone(1)[0].confidence);
}

TEST(RankByLexicon, LearnsFromOtherDrawingsButNotFromThePageItself) {
  Manual manual;
  manual.Add(LexiconPart::kDrawing, Drawing({"R101"}, 1));
  manual.Add(LexiconPart::kDrawing, Drawing({"R1Ol"}, 0.6));
  EXPECT_THAT(Texts(manual.Ranked()[1]), ElementsAre("R101"));
  Manual single;
  single.Add(LexiconPart::kDrawing, Drawing({"R101"}, 0.9));
  EXPECT_DOUBLE_EQ(single.Ranked()[0][0].confidence, single.alone(0)[0].confidence);
}

TEST(RankByLexicon, DoubtsALoneNumberFarBeyondTheOthers) {
  Manual manual;
  manual.Add(LexiconPart::kDrawing, Drawing({"R101 R102 R103 R104 R105", "R106 R107 R108 R109", "R9186"}, 0.8));
  const std::vector<Sighting> ranked = manual.Ranked()[0];
  ASSERT_EQ(ranked.size(), 10U);
  EXPECT_EQ(ranked[9].text, "R9186");
  EXPECT_LT(ranked[9].confidence, manual.alone(0)[9].confidence);
  EXPECT_DOUBLE_EQ(ranked[8].confidence, manual.alone(0)[8].confidence);
}

TEST(RankByLexicon, DoubtsThePointsOfAlignmentPages) {
  Manual manual;
  manual.Add(LexiconPart::kAlignment, PageOf({"ADJUST A1 A2 A3 A4 FOR MAXIMUM"}));
  manual.Add(LexiconPart::kDrawing, Drawing({"A1     R5     A9"}));
  EXPECT_THAT(Texts(manual.Ranked()[1]), ElementsAre("R5", "A9"));
  Manual listed;
  listed.Add(LexiconPart::kAlignment, PageOf({"ADJUST A1 A2 A3 A4 FOR MAXIMUM"}));
  listed.Add(LexiconPart::kSource, PageOf({}), Listed({"A1"}));
  listed.Add(LexiconPart::kDrawing, Drawing({"A1     R5"}));
  EXPECT_THAT(Texts(listed.Ranked()[2]), ElementsAre("A1", "R5")) << "an assembly of the list";
}

TEST(RankByLexicon, LeavesPagesThatAreNoDrawingsAsTheyAre) {
  Manual manual;
  manual.Add(LexiconPart::kSource, PageOf({"R1 R2 R3"}), Listed({"R1"}));
  manual.Add(LexiconPart::kNone, PageOf({"Rt"}));
  const auto ranked = manual.Ranked();
  EXPECT_EQ(ranked[0], manual.alone(0));
  EXPECT_EQ(ranked[1], manual.alone(1));
}

TEST(RankByLexicon, IsEmptyForAManualWithoutPages) { EXPECT_THAT(RankByLexicon({}, ShippedRules()), IsEmpty()); }

}  // namespace
}  // namespace benchleaf
