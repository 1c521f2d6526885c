#include "extract/numbering_steps.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <deque>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::extract {
namespace {

// Keeps the designators that names are views of.
RowName Named(const std::string& designator, std::string_view assembly = "") {
  static std::deque<Designator> kept;
  kept.push_back(*ParseDesignator(designator, ShippedRules().tables()));
  return {assembly, kept.back()};
}

NumberingSteps StepsOf(const std::vector<std::string>& rows) {
  std::vector<std::pair<RowName, RowName>> pairs;
  for (std::size_t i = 1; i < rows.size(); ++i) {
    pairs.emplace_back(Named(rows[i - 1]), Named(rows[i]));
  }
  return NumberingSteps(pairs);
}

double Likeliness(const NumberingSteps& steps, const std::string& above, const std::string& below) {
  return steps.Likeliness(steps.EndAt(Named(above)), steps.EndAt(Named(below)));
}

TEST(NumberingSteps, ExpectRisingNumbersInBlocksOfAClass) {
  const NumberingSteps steps = StepsOf({"C1", "C2", "C3", "C4", "C5", "R1", "R2", "R3", "R4"});
  EXPECT_GT(Likeliness(steps, "R4", "R5"), Likeliness(steps, "R4", "R8"));
  EXPECT_GT(Likeliness(steps, "R4", "R8"), Likeliness(steps, "R8", "R4"));
  EXPECT_GT(Likeliness(steps, "R4", "R5"), Likeliness(steps, "R4", "C5"));
  EXPECT_GT(Likeliness(steps, "C9", "R1"), Likeliness(steps, "C9", "R37")) << "a class begins at its lowest number";
  EXPECT_GT(Likeliness(steps, "R4", "R5"), Likeliness(steps, "R4", "R4")) << "no part is listed twice";
}

TEST(NumberingSteps, LearnFromTheListHowItGoesOn) {
  const NumberingSteps in_order = StepsOf({"R1", "R2", "R3", "R4", "R5", "R6"});
  const NumberingSteps by_value = StepsOf({"R9", "R2", "R13", "R4", "R15", "R3"});
  EXPECT_GT(Likeliness(by_value, "R9", "R3"), Likeliness(in_order, "R9", "R3"));
}

TEST(NumberingSteps, BeginAnewInEveryAssembly) {
  const NumberingSteps steps = StepsOf({"R1", "R2", "R3"});
  const StepEnd last = steps.EndAt(Named("R9", "A1"));
  EXPECT_GT(steps.Likeliness(last, steps.EndAt(Named("R1", "A2"))),
            steps.Likeliness(last, steps.EndAt(Named("R1", "A1"))));
}

TEST(NumberingSteps, KnowSectionsAndSockets) {
  const NumberingSteps steps = StepsOf({"V1", "XV1", "V2", "XV2", "C1A", "C1B"});
  EXPECT_GT(Likeliness(steps, "C2A", "C2B"), Likeliness(steps, "C2A", "C2A"));
  EXPECT_GT(Likeliness(steps, "V3", "XV3"), Likeliness(steps, "V3", "XV9"));
}

}  // namespace
}  // namespace benchleaf::extract
