#include "benchleaf/report/laid_words.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

PageRecord Page() {
  PageRecord page;
  page.reading.frame = {.scan_width = 1000,
                        .scan_height = 1000,
                        .dpi = 150,
                        .orientation = 0,
                        .scale = 1,
                        .skew_degrees = 0,
                        .level_width = 1000,
                        .level_height = 1000};
  return page;
}

Word Read(const std::string& text, const Box& box, int turn = 0) {
  Word word;
  word.text = text;
  word.box = box;
  word.turn = turn;
  return word;
}

Sighting Seen(const std::string& text, const FractionBox& box) {
  Sighting sighting;
  sighting.text = text;
  sighting.box = box;
  return sighting;
}

TEST(LaidWords, StandOnTheirBaselineInTheirOwnTurn) {
  PageRecord page = Page();
  page.reading.words = {Read("V1", {100, 200, 40, 20}), Read("R7", {500, 500, 20, 60}, 270)};
  const auto words = LaidWords(page);
  ASSERT_EQ(words.size(), 2U);
  EXPECT_EQ(words[0], (LaidWord{"V1", {0.1, 0.22}, {0.14, 0.22}, {0.1, 0.2}}));
  // Read upwards: it begins at the bottom, and its tops are on the left.
  EXPECT_EQ(words[1], (LaidWord{"R7", {0.52, 0.56}, {0.52, 0.5}, {0.5, 0.56}}));
}

TEST(LaidWords, TheTermIsLaidWhereAWordWasMisread) {
  PageRecord page = Page();
  page.reading.words = {Read("Cl2", {100, 200, 40, 20})};
  page.sightings = {Seen("C12", {0.1, 0.2, 0.04, 0.02})};
  const auto words = LaidWords(page);
  ASSERT_EQ(words.size(), 1U);
  EXPECT_EQ(words[0].text, "C12");
}

TEST(LaidWords, TermsOfAGroupLieSideBySideOverIt) {
  PageRecord page = Page();
  page.reading.words = {Read("C4,8,", {100, 200, 60, 20}), Read("11", {165, 200, 30, 20})};
  const FractionBox cell{0.1, 0.2, 0.095, 0.02};
  page.sightings = {Seen("C4", cell), Seen("C8", cell), Seen("C11", cell), Seen("C8", cell)};
  const auto words = LaidWords(page);
  ASSERT_EQ(words.size(), 3U);
  EXPECT_EQ(words[0].text, "C4,8,");
  EXPECT_EQ(words[2].text, "C4 C8 C11");
}

TEST(LaidWords, OnASidewaysScanRunAlongItsSide) {
  PageRecord page = Page();
  page.reading.frame.orientation = 90;
  page.reading.words = {Read("V1", {100, 200, 40, 20})};
  const LaidWord word = LaidWords(page).at(0);
  EXPECT_DOUBLE_EQ(word.start.x, word.end.x) << "the scan is turned clockwise to stand upright: there the word rises";
  EXPECT_GT(word.start.y, word.end.y);
  EXPECT_LT(word.above.x, word.start.x);
}

TEST(LaidWords, OfAPageThatWasNotReadAreNone) { EXPECT_TRUE(LaidWords(PageRecord()).empty()); }

}  // namespace
}  // namespace benchleaf
