#include "bench/search_scorer.h"

#include <gtest/gtest.h>

#include <vector>

namespace benchleaf::bench {
namespace {

constexpr FractionBox kHere{0.1, 0.1, 0.05, 0.02};
constexpr FractionBox kThere{0.5, 0.5, 0.05, 0.02};
constexpr FractionBox kElsewhere{0.8, 0.8, 0.05, 0.02};

std::vector<scanmaker::PageTruth> Page() {
  scanmaker::PageTruth page;
  page.terms = {
      {"designator", "C12", kHere, 0}, {"designator", "C12", kThere, 0}, {"designator", "C13", kElsewhere, 0}};
  return {page};
}

FoundSighting Answer(const FractionBox& box, Match match = Match::kExact, int page = 1) {
  FoundSighting answer;
  answer.place.page = page;
  answer.sighting.box = box;
  answer.match = match;
  return answer;
}

TEST(SearchScorer, CountsPlacesByExactAnswersAndByAny) {
  const std::vector<FoundSighting> answers = {Answer(kHere), Answer(kThere, Match::kLookAlike), Answer(kElsewhere)};
  const JudgedAnswers judged = JudgeAnswers(Page(), "designator", "C12", answers);
  EXPECT_EQ(judged.right, (std::vector<bool>{true, true, false}));
  SearchTally tally;
  tally.Add(judged, answers);
  EXPECT_DOUBLE_EQ(tally.ExactRecall(), 0.5);
  EXPECT_DOUBLE_EQ(tally.Recall(), 1);
  EXPECT_DOUBLE_EQ(tally.FirstRight(), 1);
  EXPECT_DOUBLE_EQ(tally.RightBeforeWrong(), 1);
  EXPECT_DOUBLE_EQ(tally.AnswersPerQuery(), 3);
  EXPECT_DOUBLE_EQ(tally.ExactAnswersPerQuery(), 2);
}

TEST(SearchScorer, SeesAWrongAnswerInFront) {
  const std::vector<FoundSighting> answers = {Answer(kElsewhere), Answer(kHere), Answer(kThere, Match::kExact, 2)};
  SearchTally tally;
  tally.Add(JudgeAnswers(Page(), "designator", "C12", answers), answers);
  EXPECT_DOUBLE_EQ(tally.FirstRight(), 0);
  EXPECT_DOUBLE_EQ(tally.RightBeforeWrong(), 0);
  EXPECT_DOUBLE_EQ(tally.Recall(), 0.5) << "an answer on another page finds nothing here";
}

TEST(SearchScorer, AsksNothingOfATermThatIsNotThere) {
  SearchTally tally;
  tally.Add(JudgeAnswers(Page(), "designator", "C99", {}), {});
  EXPECT_EQ(tally.there, 0);
  EXPECT_DOUBLE_EQ(tally.Recall(), 0);
  EXPECT_DOUBLE_EQ(tally.FirstRight(), 0);
}

}  // namespace
}  // namespace benchleaf::bench
