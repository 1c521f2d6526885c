#include "bench/reliability.h"

#include <gtest/gtest.h>

namespace benchleaf::bench {
namespace {

SeenVerdict Stated(double confidence, Judgement judgement) { return {{"C1", {}, confidence}, judgement, {}}; }

TEST(ReliabilityTest, SortsSightingsByStatedConfidence) {
  Reliability reliability;
  reliability.Add(
      {{}, {Stated(0.95, Judgement::kRight), Stated(0.92, Judgement::kFalse), Stated(1, Judgement::kRight)}});
  reliability.Add({{}, {Stated(0, Judgement::kFalse), Stated(0.05, Judgement::kOtherText)}});
  EXPECT_EQ(reliability.bins()[9].seen, 3) << "1 belongs to the last bin";
  EXPECT_EQ(reliability.bins()[9].right, 2);
  EXPECT_EQ(reliability.bins()[0].seen, 1) << "other text that stands there is left out";
  EXPECT_EQ(reliability.seen(), 4);
}

TEST(ReliabilityTest, MeasuresHowFarStatementsAreOff) {
  Reliability half;
  half.Add({{}, {Stated(0.5, Judgement::kRight), Stated(0.5, Judgement::kFalse)}});
  EXPECT_DOUBLE_EQ(half.ExpectedCalibrationError(), 0) << "a stated 0.5 is right one time in two";
  Reliability bold;
  bold.Add({{}, {Stated(0.9, Judgement::kFalse), Stated(0.9, Judgement::kFalse)}});
  EXPECT_DOUBLE_EQ(bold.ExpectedCalibrationError(), 0.9);
  half.Add(bold);
  EXPECT_DOUBLE_EQ(half.ExpectedCalibrationError(), 0.45) << "half the sightings are off by 0.9";
  EXPECT_EQ(Reliability{}.ExpectedCalibrationError(), 0);
}

}  // namespace
}  // namespace benchleaf::bench
