#include "store/test_index.h"

#include <gmock/gmock.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

using MisreadSearchTest = IndexTest;
using testing::ElementsAre;
using testing::IsEmpty;

// A word with its readings, the first one the surest, 100 px right of the one before.
struct Read {
  std::vector<std::pair<std::string, double>> readings;
};

ManualRecord OnePage(const std::vector<Read>& words, std::vector<Sighting> sightings = {}) {
  ManualRecord manual;
  manual.set = "A";
  manual.manual = "service";
  PageRecord page = MakePage("A.pdf", 1, PageKind::kSchematic);
  for (const Read& read : words) {
    Word word = MakeWord(read.readings.front().first, 100 * static_cast<int>(page.reading.words.size()));
    word.confidence = read.readings.front().second;
    for (std::size_t i = 1; i < read.readings.size(); ++i) {
      word.alternatives.push_back({read.readings[i].first, read.readings[i].second});
    }
    page.reading.words.push_back(word);
  }
  page.sightings = std::move(sightings);
  manual.pages = {page};
  return manual;
}

std::vector<std::string> Told(const std::vector<FoundSighting>& found) {
  std::vector<std::string> told;
  for (const FoundSighting& one : found) told.push_back(one.sighting.read + " " + std::string(Name(one.match)));
  return told;
}

TEST_F(MisreadSearchTest, FindsATermThatIsNotTheSurestReading) {
  Store(OnePage({{{{"13", 0.2}, {"I3", 0.1}}}, {{{"IV4", 0.1}}}, {{{"\"ZZ9", 0.3}, {"2C35", 0.1}}}}));
  const auto reader = Reader();
  EXPECT_THAT(Told(reader->Find({"I3", "", {}, 10}).value()), ElementsAre("13 look-alike"));
  EXPECT_THAT(Told(reader->Find({"V4", "", {}, 10}).value()), ElementsAre("IV4 look-alike")) << "an outline in front";
  EXPECT_THAT(Told(reader->Find({"2C3S", "", {}, 10}).value()), ElementsAre("\"ZZ9 look-alike"));
  EXPECT_THAT(reader->Find({"V5", "", {}, 10}).value(), IsEmpty());
}

TEST_F(MisreadSearchTest, TheLikeliestComesFirst) {
  Store(OnePage({{{{"R1O1", 0.3}}}, {{{"RI0I", 0.9}}}}));
  EXPECT_THAT(Told(Reader()->Find({"R101", "", {}, 10}).value()), ElementsAre("RI0I look-alike", "R1O1 look-alike"));
}

TEST_F(MisreadSearchTest, ALongTermMayHaveACharacterMisread) {
  Store(OnePage({{{{"20-1182-3", 0.8}}}}));
  const auto reader = Reader();
  EXPECT_THAT(Told(reader->Find({"20-1132-3", "", {}, 10}).value()), ElementsAre("20-1182-3 look-alike"));
  EXPECT_THAT(reader->Find({"20-4437-9", "", {}, 10}).value(), IsEmpty());
}

TEST_F(MisreadSearchTest, WhatIsSurelyAnotherTermIsLeftAlone) {
  ManualRecord manual = OnePage({{{{"C15", 0.97}, {"CI5", 0.1}}}});
  Sighting sure = MakeSighting(TermKind::kDesignator, "C15", 0.97);
  sure.box = ToScan(manual.pages[0].reading.frame, manual.pages[0].reading.words[0].box);
  manual.pages[0].sightings = {sure};
  Store(manual);
  EXPECT_THAT(Told(Reader()->Find({"C15", "", {}, 10}).value()).size(), 1U) << "each place once";
}

}  // namespace
}  // namespace benchleaf
