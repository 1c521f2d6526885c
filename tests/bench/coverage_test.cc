#include "bench/coverage.h"

#include <gtest/gtest.h>

namespace benchleaf::bench {
namespace {

TextString Candidate(const Box& box, bool standing = false) {
  TextString candidate;
  candidate.box = box;
  candidate.standing = standing;
  return candidate;
}

TEST(Coverage, TellsHowATextIsHeld) {
  const TextPlace place{"designator", "R12", {100, 50, 60, 24}, false};
  const struct {
    TextString candidate;
    Cover cover;
    const char* reason;
  } kCases[] = {
      {Candidate({99, 49, 62, 26}), Cover::kFits, "its own box"},
      {Candidate({99, 49, 77, 26}), Cover::kFits, "a little more"},
      {Candidate({99, 49, 120, 26}), Cover::kMerged, "with what stands behind it"},
      {Candidate({99, 20, 62, 80}), Cover::kMerged, "with what stands above and below it"},
      {Candidate({120, 49, 40, 26}), Cover::kCut, "without its letter"},
      {Candidate({100, 50, 60, 12}), Cover::kCut, "its upper half"},
      {Candidate({140, 49, 20, 15}), Cover::kAbsent, "a scrap of it"},
      {Candidate({99, 49, 62, 26}, true), Cover::kAbsent, "across its direction"},
      {Candidate({300, 49, 62, 26}), Cover::kAbsent, "elsewhere"},
  };
  for (const auto& one : kCases) EXPECT_EQ(CoverOf(place, {one.candidate}), one.cover) << one.reason;
}

TEST(Coverage, TakesTheBestCandidate) {
  const TextPlace place{"value", "47K", {100, 50, 24, 60}, true};
  EXPECT_EQ(CoverOf(place, {Candidate({100, 50, 24, 30}, true), Candidate({100, 50, 24, 60}, true),
                            Candidate({100, 0, 24, 200}, true)}),
            Cover::kFits);
  EXPECT_EQ(CoverOf(place, {}), Cover::kAbsent);
}

TEST(Coverage, FindsTheTextsOnTheLevelPage) {
  scanmaker::MadePage made;
  made.image = GreyImage(3000, 2000);
  made.terms = {{"designator", "R12", {1000, 500, 60, 24}, 0}, {"value", "47K", {2000, 900, 24, 60}, 270}};
  const scanmaker::DegradedPage page = scanmaker::Degrade(made.image, scanmaker::Grade::kClean, 1);
  PageFrame frame;
  frame.scan_width = frame.level_width = 3000;
  frame.scan_height = frame.level_height = 2000;
  const std::vector<TextPlace> places = PlacesOnLevelPage(made, page, frame);
  ASSERT_EQ(places.size(), 2U);
  EXPECT_EQ(places[0].box, (Box{1000, 500, 60, 24}));
  EXPECT_FALSE(places[0].standing);
  EXPECT_EQ(places[1].box, (Box{2000, 900, 24, 60}));
  EXPECT_TRUE(places[1].standing);
}

}  // namespace
}  // namespace benchleaf::bench
