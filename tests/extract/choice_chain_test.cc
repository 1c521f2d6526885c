#include "extract/choice_chain.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace benchleaf::extract {
namespace {

constexpr double kTolerance = 1e-9;

TEST(ChancesInChain, AreThoseOfEachPlaceWhereStepsTellNothing) {
  const auto chances = ChancesInChain({{std::log(0.3), std::log(0.1)}, {std::log(0.2), std::log(0.2)}},
                                      [](auto, auto, auto) { return 0.0; });
  EXPECT_NEAR(chances[0][0], 0.75, kTolerance);
  EXPECT_NEAR(chances[1][1], 0.5, kTolerance);
}

TEST(ChancesInChain, AreToldByTheNeighboursOnBothSides) {
  // The middle place tells nothing; like follows like nine times in ten.
  const auto step = [](std::size_t, std::size_t from, std::size_t to) { return std::log(from == to ? 0.9 : 0.1); };
  const auto chances = ChancesInChain({{0, -50}, {0, 0}, {0, -50}}, step);
  EXPECT_NEAR(chances[1][0], 0.81 / 0.82, kTolerance);
}

TEST(ChancesInChain, TakesPlacesWithDifferentNumbersOfChoices) {
  const auto chances =
      ChancesInChain({{0}, {0, 0, 0}}, [](auto, auto, std::size_t to) { return to == 1 ? 0.0 : -60.0; });
  EXPECT_NEAR(chances[0][0], 1, kTolerance);
  EXPECT_NEAR(chances[1][1], 1, kTolerance);
  EXPECT_TRUE(ChancesInChain({}, [](auto, auto, auto) { return 0.0; }).empty());
}

}  // namespace
}  // namespace benchleaf::extract
