#include "extract/missing_parts.h"

#include "extract/page_text.h"
#include "extract/rule_tables.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

Entry Listed(const std::string& designator) {
  Entry entry;
  entry.designator = designator;
  entry.confidence = 0.95;
  return entry;
}

// What is added to a drawing that surely shows R1, R2 and C11, with one more word that was read badly.
std::vector<std::string> Added(const std::vector<std::string>& listed, const std::string& read,
                               double confidence = 0.1) {
  PageReading drawing = PageOf({"R1 R2 C11", read}, WordOrigin::kString);
  drawing.words.back().confidence = confidence;
  std::vector<Sighting> seen;
  for (std::size_t i = 0; i < 3; ++i) {
    const Word& word = drawing.words[i];
    Sighting sighting;
    sighting.text = word.text;
    sighting.box = ToScan(drawing.frame, word.box);
    sighting.confidence = 0.9;
    seen.push_back(sighting);
  }
  std::vector<Entry> entries;
  for (const std::string& designator : listed) entries.push_back(Listed(designator));
  const PageReading none;
  const std::vector<Sighting> no_sightings;
  const std::vector<Entry> no_entries;
  const std::vector<LexiconPage> pages = {{LexiconPart::kDrawing, &drawing, &seen, &no_entries},
                                          {LexiconPart::kSource, &none, &no_sightings, &entries}};
  std::vector<std::vector<Sighting>> sightings = {seen, {}};
  extract::AddMissingParts(pages, ShippedRules().tables(), sightings);
  std::vector<std::string> added;
  for (std::size_t i = 3; i < sightings[0].size(); ++i) added.push_back(sightings[0][i].text);
  return added;
}

TEST(AddMissingParts, FindsALabelWhoseOutlineWasReadAsALetter) {
  const std::vector<std::string> listed = {"R1", "R2", "C11", "V4", "V14", "C15"};
  EXPECT_THAT(Added(listed, "IV4"), ElementsAre("V4")) << "an outline in front";
  EXPECT_THAT(Added(listed, ")V4"), ElementsAre("V4"));
  EXPECT_THAT(Added(listed, "~~c15"), ElementsAre("C15")) << "small, behind a piece of wire";
}

TEST(AddMissingParts, AddsNothingThatIsDoubtful) {
  const std::vector<std::string> listed = {"R1", "R2", "C11", "V4", "C15", "C16"};
  EXPECT_THAT(Added(listed, "V5"), ElementsAre()) << "not listed";
  EXPECT_THAT(Added(listed, "li"), IsEmpty()) << "a scrap";
  EXPECT_THAT(Added(listed, "R2"), IsEmpty()) << "seen already";
  EXPECT_THAT(Added(listed, "IV4", 0.001), IsEmpty()) << "hardly read at all";
}

TEST(AddMissingParts, LooksOnADrawingOfFewOnlyForWhatNoDrawingShows) {
  EXPECT_THAT(Added({"R1", "R2", "C11", "V4", "V5", "V6", "V7", "V8", "V9"}, "IV4"), ElementsAre("V4"));
}

}  // namespace
}  // namespace benchleaf
