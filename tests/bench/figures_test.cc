#include "bench/figures.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace benchleaf::bench {
namespace {

using testing::HasSubstr;
using testing::Not;

ReaderFigures Figures(const char* reader, int found, double seconds) {
  ReaderFigures figures;
  figures.grade = "medium";
  figures.reader = reader;
  figures.pages = 2;
  figures.seconds = seconds;
  Tally tally;
  tally.upright = 10;
  tally.upright_found = found;
  figures.kinds = {{"designator", tally}, {"tube", {}}};
  return figures;
}

TEST(FiguresTest, ListKindsThatStandOnThePages) {
  const std::string lines = TableLines(Figures("benchleaf", 8, 6));
  EXPECT_THAT(lines, HasSubstr("0.800"));
  EXPECT_THAT(lines, HasSubstr("3.00")) << "seconds a page";
  EXPECT_THAT(lines, Not(HasSubstr("tube"))) << "none stands there";
  EXPECT_THAT(lines, Not(HasSubstr("rows"))) << "no parts list";
}

TEST(FiguresTest, CompareWithTheBareReader) {
  EXPECT_EQ(RatioLine(Figures("benchleaf", 8, 6), Figures("bare", 4, 2)),
            "medium   benchleaf finds 2.00 times as many designators as bare, in 3.00 times the time\n");
  EXPECT_EQ(RatioLine(Figures("benchleaf", 8, 6), Figures("bare", 0, 2)), "");
}

TEST(FiguresTest, DrawReliabilityWithoutEmptyBins) {
  Reliability reliability;
  reliability.Add({{}, {{{"C1", {}, 0.95}, Judgement::kRight, {}}}});
  const std::string lines = ReliabilityLines(reliability);
  EXPECT_THAT(lines, HasSubstr("0.9-1.0       1      1  1.000  0.950"));
  EXPECT_THAT(lines, HasSubstr("expected calibration error 0.050"));
  EXPECT_THAT(lines, Not(HasSubstr("0.5-0.6")));
}

TEST(FiguresTest, AreWrittenForScripts) {
  ReaderFigures figures = Figures("benchleaf", 8, 6);
  EXPECT_THAT(ToJson({figures}), HasSubstr(R"("seconds_per_page": 3.0)"));
  EXPECT_THAT(ToJson({figures}), Not(HasSubstr("reliability"))) << "bare reading states none";
  figures.states_confidence = true;
  EXPECT_THAT(ToJson({figures}), HasSubstr("expected_calibration_error"));
  EXPECT_EQ(ToJson({}), "[]\n");
}

}  // namespace
}  // namespace benchleaf::bench
