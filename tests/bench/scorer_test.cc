#include "bench/scorer.h"

#include <gtest/gtest.h>

namespace benchleaf::bench {
namespace {

scanmaker::PageTruth Page() {
  scanmaker::PageTruth page;
  page.terms = {{"designator", "C12", {0.1, 0.1, 0.1, 0.02}, 0},
                {"designator", "R7", {0.5, 0.5, 0.02, 0.1}, 270},
                {"text", "A4", {0.8, 0.8, 0.05, 0.02}, 0}};
  return page;
}

Judgement JudgementOf(const Seen& seen) { return JudgeDesignators(Page(), {seen}).seen[0].judgement; }

TEST(ScorerTest, JudgesTextAndPlace) {
  EXPECT_EQ(JudgementOf({"C12", {0.1, 0.1, 0.1, 0.02}}), Judgement::kRight);
  EXPECT_EQ(JudgementOf({"C12", {0.16, 0.1, 0.1, 0.02}}), Judgement::kRight) << "40 % of the box";
  EXPECT_EQ(JudgementOf({"C12", {0.18, 0.1, 0.1, 0.02}}), Judgement::kFalse) << "20 % of the box";
  EXPECT_EQ(JudgementOf({"C12", {0.5, 0.5, 0.02, 0.1}}), Judgement::kFalse) << "another stands there";
  EXPECT_EQ(JudgementOf({"C1Z", {0.1, 0.1, 0.1, 0.02}}), Judgement::kFalse) << "misread";
  EXPECT_EQ(JudgementOf({"A4", {0.8, 0.8, 0.05, 0.02}}), Judgement::kOtherText) << "a net's name";
  EXPECT_EQ(JudgementOf({"A4", {0.2, 0.8, 0.05, 0.02}}), Judgement::kFalse) << "the net's name is elsewhere";
}

TEST(ScorerTest, CountsADesignatorOnceOnly) {
  const PageVerdict verdict =
      JudgeDesignators(Page(), {{"C12", {0.13, 0.1, 0.1, 0.02}}, {"C12", {0.1, 0.1, 0.1, 0.02}}});
  EXPECT_EQ(verdict.seen[0].judgement, Judgement::kFalse);
  EXPECT_EQ(verdict.seen[1].judgement, Judgement::kRight) << "fits better";
  EXPECT_TRUE(verdict.truth[0].found);
  EXPECT_FALSE(verdict.truth[1].found);
}

TEST(ScorerTest, LetsOneSightingFindOneDesignatorOnly) {
  scanmaker::PageTruth page;
  page.terms = {{"designator", "U1", {0.1, 0.1, 0.1, 0.1}, 0}, {"designator", "U1", {0.15, 0.1, 0.1, 0.1}, 0}};
  const PageVerdict verdict = JudgeDesignators(page, {{"U1", {0.1, 0.1, 0.15, 0.1}}});
  EXPECT_NE(verdict.truth[0].found, verdict.truth[1].found);
}

TEST(TallyTest, DividesWhatWasFoundByWhatIsThereAndWhatWasSeen) {
  Tally tally;
  tally.Add(JudgeDesignators(
                Page(), {{"C12", {0.1, 0.1, 0.1, 0.02}}, {"X9", {0.3, 0.3, 0.1, 0.1}}, {"A4", {0.8, 0.8, 0.05, 0.02}}}),
            3);
  tally.Add(JudgeDesignators(Page(), {}), 1);
  EXPECT_DOUBLE_EQ(tally.Recall(), 0.25);
  EXPECT_DOUBLE_EQ(tally.UprightRecall(), 0.5);
  EXPECT_DOUBLE_EQ(tally.TurnedRecall(), 0);
  EXPECT_DOUBLE_EQ(tally.Precision(), 0.5) << "A4 counts neither way";
  EXPECT_EQ(tally.other_text, 1);
  EXPECT_DOUBLE_EQ(tally.SecondsPerPage(), 2);
}

TEST(TallyTest, IsZeroWithoutPages) {
  EXPECT_EQ(Tally{}.Recall(), 0);
  EXPECT_EQ(Tally{}.Precision(), 0);
  EXPECT_EQ(Tally{}.SecondsPerPage(), 0);
}

}  // namespace
}  // namespace benchleaf::bench
