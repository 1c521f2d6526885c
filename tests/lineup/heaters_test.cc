#include "benchleaf/lineup/heaters.h"

#include "lineup/shipped_tables.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

HeaterSums SumsOf(const std::vector<std::string>& types) {
  std::vector<const TubeEntry*> tubes;
  tubes.reserve(types.size());
  for (const std::string& type : types) tubes.push_back(ShippedTubes().FindNearest(type));
  return SumHeaters(tubes);
}

// The line-ups below are common practice of their years; the heaters' figures are those of config/tubes.tsv, which are
// checked against handbooks in tests/outside.
TEST(SumHeaters, AddsTheCurrentsOfATransformerSetByVoltage) {
  const HeaterSums sums = SumsOf({"6BE6", "6BA6", "6AT6", "6AQ5", "5Y3GT"});
  EXPECT_EQ(sums.wiring, HeaterWiring::kParallel) << sums.reason;
  ASSERT_EQ(sums.groups.size(), 2U);
  EXPECT_EQ(sums.groups[0].volts, 6.3);
  EXPECT_NEAR(sums.groups[0].amps, 0.3 + 0.3 + 0.3 + 0.45, 1e-9);
  EXPECT_EQ(sums.groups[1].volts, 5);
  EXPECT_NEAR(sums.groups[1].amps, 2, 1e-9) << "the rectifier has a winding of its own";
  EXPECT_FALSE(sums.string);
}

TEST(SumHeaters, AddsTheVoltsOfAnAcDcSet) {
  const HeaterSums sums = SumsOf({"12BE6", "12BA6", "12AV6", "50C5", "35W4"});
  EXPECT_EQ(sums.wiring, HeaterWiring::kSeries) << sums.reason;
  ASSERT_TRUE(sums.string);
  EXPECT_EQ(sums.string->amps, 0.15);
  EXPECT_NEAR(sums.string->volts, 3 * 12.6 + 50 + 35, 1e-9);
  EXPECT_TRUE(sums.string->unequal.empty());
  EXPECT_TRUE(sums.groups.empty());
}

TEST(SumHeaters, FlagsACurrentThatDoesNotFitTheString) {
  // Somebody put a 6BA6 (0.3 A) where a 12BA6 (0.15 A) belongs.
  const HeaterSums sums = SumsOf({"12BE6", "6BA6", "12AV6", "50C5", "35W4"});
  EXPECT_EQ(sums.wiring, HeaterWiring::kSeries) << sums.reason;
  ASSERT_TRUE(sums.string);
  ASSERT_EQ(sums.string->unequal.size(), 1U);
  EXPECT_EQ(sums.string->unequal[0].tube, 1U);
  EXPECT_EQ(sums.string->unequal[0].amps, 0.3);
  EXPECT_NEAR(sums.string->volts, 2 * 12.6 + 50 + 35, 1e-9) << "not in the sum";
}

TEST(SumHeaters, WiresATwoWayHeaterForTheOthers) {
  const HeaterSums parallel = SumsOf({"6AU6", "6BA6", "12AX7", "6AQ5"});
  ASSERT_EQ(parallel.groups.size(), 1U) << parallel.reason;
  EXPECT_EQ(parallel.groups[0].heaters[2].volts, 6.3);
  EXPECT_TRUE(parallel.groups[0].heaters[2].one_of_two);
  const HeaterSums series = SumsOf({"12BA6", "12AX7", "50C5", "35W4"});
  ASSERT_TRUE(series.string) << series.reason;
  EXPECT_EQ(series.string->heaters[1].volts, 12.6);
}

TEST(SumHeaters, KnowsATelevisionStringOf600Milliamperes) {
  const HeaterSums sums = SumsOf({"4BQ7A", "5CG8", "3BZ6", "3CB6", "3CB6", "3AL5", "12BY7A", "3AU6", "5U8", "12L6GT",
                                  "12BH7A", "6SN7GTB", "12DQ6A", "12AX4GTA", "1B3GT", "21ZP4"});
  EXPECT_EQ(sums.wiring, HeaterWiring::kSeries) << sums.reason;
  ASSERT_TRUE(sums.string);
  EXPECT_EQ(sums.string->amps, 0.6);
  EXPECT_EQ(sums.high_voltage, (std::vector<std::size_t>{14}));
  EXPECT_NEAR(sums.string->volts, 4.2 + 2 * 4.7 + 5 * 3.15 + 4 * 6.3 + 3 * 12.6, 1e-9) << "12BY7A and 12BH7A at 6.3 V";
}

TEST(SumHeaters, NeverGuessesWhatIsNotKnown) {
  const HeaterSums sums = SumsOf({"6QZ9", "0A2", "6AU6", "6BA6", "6AQ5", "2GK5"});
  EXPECT_EQ(sums.not_known, (std::vector<std::size_t>{0, 5})) << "6QZ9 begins with 6, and that is no heater's figure";
  EXPECT_EQ(sums.without_heater, (std::vector<std::size_t>{1}));
  EXPECT_NEAR(sums.groups.at(0).amps, 0.3 + 0.3 + 0.45, 1e-9);
  EXPECT_EQ(SumsOf({"6AU6"}).wiring, HeaterWiring::kUnknown);
  EXPECT_EQ(SumsOf({}).wiring, HeaterWiring::kUnknown);
}

TEST(SumHeaters, SaysWhenTypesFitNeither) {
  const HeaterSums sums = SumsOf({"6AU6", "12BA6", "50C5", "2A3", "6AQ5", "12AT6"});
  EXPECT_EQ(sums.wiring, HeaterWiring::kUnclear) << sums.reason;
  EXPECT_FALSE(sums.groups.empty());
}

}  // namespace
}  // namespace benchleaf
