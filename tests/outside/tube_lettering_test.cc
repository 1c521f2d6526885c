#include "outside/tube_lettering.h"

#include "outside/term_forms.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <set>
#include <string>

namespace benchleaf::outside {
namespace {

TEST(TubeLetteringTest, StandsInForDevicesOnly) {
  EXPECT_TRUE(HoldsDevice("U12"));
  EXPECT_TRUE(HoldsDevice("IC3"));
  EXPECT_TRUE(HoldsDevice("Q1"));
  EXPECT_FALSE(HoldsDevice("R12"));
  EXPECT_FALSE(HoldsDevice("QZ1")) << "another class";
  EXPECT_FALSE(HoldsDevice(""));
}

TEST(TubeLetteringTest, GivesEachPartOneTypeAndSeedsDifferentOnes) {
  EXPECT_EQ(TubeTypeFor("U2", 101), TubeTypeFor("U2", 101));
  std::set<std::string> types;
  for (int number = 1; number <= 200; ++number) {
    const std::string& type = TubeTypeFor("U" + std::to_string(number), 7);
    EXPECT_TRUE(HasTubeForm(type)) << type;
    types.insert(type);
  }
  EXPECT_GT(types.size(), 25U) << "nearly all are met";
  int alike = 0;
  for (std::uint64_t seed = 0; seed < 100; ++seed)
    alike += TubeTypeFor("U1", seed) == TubeTypeFor("U1", seed + 1000) ? 1 : 0;
  EXPECT_LT(alike, 20);
}

}  // namespace
}  // namespace benchleaf::outside
