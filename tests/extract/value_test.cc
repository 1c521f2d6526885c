#include "extract/value.h"

#include <gtest/gtest.h>

namespace benchleaf::extract {
namespace {

TEST(ParseValue, ReadsNumbersWithUnits) {
  // Units as manuals of 1930 to 1985 write them: common practice, no source. RKM code: IEC 60062.
  const struct {
    const char* text;
    const char* canonical;
    Quantity quantity;
    double magnitude;
  } kCases[] = {
      {".05MFD", ".05MFD", Quantity::kCapacitance, 0.05e-6},
      {".047mf", ".047MF", Quantity::kCapacitance, 0.047e-6},
      {"10uF", "10UF", Quantity::kCapacitance, 10e-6},
      {"250MMF", "250MMF", Quantity::kCapacitance, 250e-12},
      {"250uuF", "250UUF", Quantity::kCapacitance, 250e-12},
      {"100mmfd", "100MMFD", Quantity::kCapacitance, 100e-12},
      {"4.7pF", "4.7PF", Quantity::kCapacitance, 4.7e-12},
      {"80-20MFD", "80-20MFD", Quantity::kCapacitance, 80e-6},
      {"470K", "470K", Quantity::kResistance, 470e3},
      {"2.2MEG", "2.2MEG", Quantity::kResistance, 2.2e6},
      {"1M", "1M", Quantity::kResistance, 1e6},
      {"10,000OHMS", "10,000OHMS", Quantity::kResistance, 10000},
      {"33OHM", "33OHM", Quantity::kResistance, 33},
      {"4K7", "4K7", Quantity::kResistance, 4700},
      {"0R22", "0R22", Quantity::kResistance, 0.22},
      {"2n2", "2N2", Quantity::kCapacitance, 2.2e-9},
      {"600V", "600V", Quantity::kVoltage, 600},
      {"-4.5V", "-4.5V", Quantity::kVoltage, 4.5},
      {"1/2W", "1/2W", Quantity::kPower, 0.5},
      {"8H", "8H", Quantity::kInductance, 8},
      {"2.5mh", "2.5MH", Quantity::kInductance, 2.5e-3},
      {"455KC", "455KC", Quantity::kFrequency, 455e3},
      {"05MFD", ".05MFD", Quantity::kCapacitance, 0.05e-6},  // its dot was lost: no number begins with a nought
      {"4,7K", "4.7K", Quantity::kResistance, 4700},
      {"2,2meg", "2.2MEG", Quantity::kResistance, 2.2e6},
  };
  for (const auto& one : kCases) {
    const auto value = ParseValue(one.text);
    ASSERT_TRUE(value.has_value()) << one.text;
    EXPECT_EQ(value->canonical, one.canonical);
    EXPECT_EQ(value->quantity, one.quantity) << one.text;
    EXPECT_NEAR(value->magnitude, one.magnitude, 1e-9 * one.magnitude) << one.text;
  }
}

TEST(ParseValue, RefusesOthers) {
  for (const char* text : {"470", ".05", "K", "MFD", "R47", "10%", "12AX7", "1/0W", "V12", "", "1..5K", "470KX",
                           "99999999999999K", "1/2/3W", "4,7", "2,5A", "12,7K", "4,,7K"}) {
    EXPECT_FALSE(ParseValue(text).has_value()) << text;
  }
}

TEST(ParseBareValue, TakesTheUnitFromTheClass) {
  EXPECT_NEAR(ParseBareValue(".05", "C")->magnitude, 0.05e-6, 1e-15);
  EXPECT_NEAR(ParseBareValue("470", "C")->magnitude, 470e-12, 1e-18);
  EXPECT_NEAR(ParseBareValue("470", "R")->magnitude, 470, 1e-9);
  EXPECT_FALSE(ParseBareValue("470", "V").has_value());
  EXPECT_FALSE(ParseBareValue("X", "R").has_value());
}

TEST(ValueWords, TellNumbersFromUnits) {
  EXPECT_TRUE(IsValueNumber("10,000"));
  EXPECT_TRUE(IsValueNumber("80-20"));
  EXPECT_FALSE(IsValueNumber("10K"));
  EXPECT_FALSE(IsValueNumber("-"));
  EXPECT_TRUE(IsValueUnit("MFD."));
  EXPECT_TRUE(IsValueUnit("ohms"));
  EXPECT_FALSE(IsValueUnit("PAPER"));
}

}  // namespace
}  // namespace benchleaf::extract
