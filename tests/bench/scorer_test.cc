#include "bench/scorer.h"

#include <gtest/gtest.h>

namespace benchleaf::bench {
namespace {

scanmaker::PageTruth Page() {
  scanmaker::PageTruth page;
  page.terms = {{"designator", "C12", {0.1, 0.1, 0.1, 0.02}, 0},
                {"designator", "R7", {0.5, 0.5, 0.02, 0.1}, 270},
                {"net", "A4", {0.8, 0.8, 0.05, 0.02}, 0},
                {"pin", "D7", {0.8, 0.2, 0.05, 0.02}, 0},
                {"tube", "EL84", {0.2, 0.8, 0.05, 0.02}, 0}};
  return page;
}

PageVerdict JudgeDesignators(const scanmaker::PageTruth& truth, const std::vector<Seen>& seen) {
  return JudgeTerms(truth, "designator", seen);
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

TEST(ScorerTest, JudgesTheKindThatIsAskedFor) {
  const Seen tube = {"EL84", {0.2, 0.8, 0.05, 0.02}};
  EXPECT_EQ(JudgeTerms(Page(), "tube", {tube}).seen[0].judgement, Judgement::kRight);
  EXPECT_EQ(JudgeTerms(Page(), "tube", {tube}).truth.size(), 1U);
  const SeenVerdict as_designator = JudgeTerms(Page(), "designator", {tube}).seen[0];
  EXPECT_EQ(as_designator.judgement, Judgement::kOtherText) << "it has a designator's form, and stands there";
  EXPECT_EQ(as_designator.stands_as, "tube");
}

TEST(TallyTest, DividesWhatWasFoundByWhatIsThereAndWhatWasSeen) {
  Tally tally;
  tally.Add(JudgeDesignators(Page(), {{"C12", {0.1, 0.1, 0.1, 0.02}},
                                      {"X9", {0.3, 0.3, 0.1, 0.1}},
                                      {"A4", {0.8, 0.8, 0.05, 0.02}},
                                      {"D7", {0.8, 0.2, 0.05, 0.02}},
                                      {"EL84", {0.2, 0.8, 0.05, 0.02}}}));
  tally.Add(JudgeDesignators(Page(), {}));
  EXPECT_DOUBLE_EQ(tally.Recall(), 0.25);
  EXPECT_DOUBLE_EQ(tally.UprightRecall(), 0.5);
  EXPECT_DOUBLE_EQ(tally.TurnedRecall(), 0);
  EXPECT_DOUBLE_EQ(tally.Precision(), 0.5) << "A4, D7 and EL84 count neither way";
  EXPECT_DOUBLE_EQ(tally.StrictPrecision(), 0.2) << "they count against";
  EXPECT_EQ(tally.nets_seen, 1);
  EXPECT_EQ(tally.pins_seen, 1);
  EXPECT_EQ(tally.other_seen, 1);
}

TEST(TallyTest, IsZeroWithoutPages) {
  EXPECT_EQ(Tally{}.Recall(), 0);
  EXPECT_EQ(Tally{}.Precision(), 0);
  EXPECT_EQ(Tally{}.StrictPrecision(), 0);
}

}  // namespace
}  // namespace benchleaf::bench
