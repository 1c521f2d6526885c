#include "benchleaf/orders/preferred_values.h"

#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

// IEC 60063, Preferred number series for resistors and capacitors, table 1: E24, of which E12 is every second and E6
// every fourth value.
constexpr double kPublished[] = {1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0,
                                 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1};

TEST(ValuesOf, AreThoseOfIec60063) {
  const struct {
    Series series;
    std::size_t step;
  } kCases[] = {{Series::kE24, 1}, {Series::kE12, 2}, {Series::kE6, 4}};
  for (const auto& c : kCases) {
    std::vector<double> published;
    for (std::size_t i = 0; i < std::size(kPublished); i += c.step) published.push_back(kPublished[i]);
    EXPECT_EQ(ValuesOf(c.series), published);
  }
}

TEST(ValuesOf, StandWhereTheSeriesHasThem) {
  // IEC 60063: the n-th value of a series of N is 10^(n/N), rounded; some old ones are rounded by custom, 5 % at most.
  for (const Series series : {Series::kE6, Series::kE12, Series::kE24}) {
    const std::vector<double>& values = ValuesOf(series);
    for (std::size_t i = 0; i < values.size(); ++i) {
      const double exact = std::pow(10.0, static_cast<double>(i) / static_cast<double>(values.size()));
      EXPECT_NEAR(values[i], exact, 0.055 * exact);
    }
  }
}

TEST(NearestPreferred, IsNearestByRatio) {
  const struct {
    double value;
    Series series;
    double preferred;
  } kCases[] = {
      {0.05e-6, Series::kE6, 0.047e-6}, {0.25e-6, Series::kE6, 0.22e-6},
      {0.25e-6, Series::kE12, 0.27e-6}, {250e-12, Series::kE24, 240e-12},
      {50e3, Series::kE24, 51e3},       {500e3, Series::kE24, 510e3},
      {9.6, Series::kE24, 10},          {9.9e-9, Series::kE6, 10e-9},
      {0.1e-6, Series::kE6, 0.1e-6},    {1, Series::kE6, 1},
      {1e6, Series::kE12, 1e6},
  };
  for (const auto& c : kCases) {
    EXPECT_NEAR(NearestPreferred(c.value, c.series), c.preferred, 1e-9 * c.preferred) << c.value;
  }
}

TEST(NearestPreferred, GivesEveryPreferredValueItself) {
  for (const Series series : {Series::kE6, Series::kE12, Series::kE24}) {
    for (int decade = -12; decade < 7; ++decade) {
      for (const double mantissa : ValuesOf(series)) {
        const double value = mantissa * std::pow(10.0, decade);
        EXPECT_NEAR(NearestPreferred(value, series), value, 1e-9 * value);
        EXPECT_NEAR(PreferredFrom(value, series), value, 1e-9 * value);
      }
    }
  }
}

TEST(PreferredFrom, NeverGoesBelow) {
  EXPECT_NEAR(PreferredFrom(36e-6, Series::kE6), 47e-6, 1e-12);
  EXPECT_NEAR(PreferredFrom(70e-6, Series::kE6), 100e-6, 1e-12);
}

TEST(Ratings, AreTheNextUp) {
  EXPECT_EQ(FilmVolts(600), 630);
  EXPECT_EQ(FilmVolts(400), 400);
  EXPECT_EQ(FilmVolts(200), 250);
  EXPECT_EQ(ElectrolyticVolts(475), 500);
  EXPECT_EQ(ElectrolyticVolts(150), 160);
  EXPECT_EQ(ElectrolyticVolts(600), std::nullopt);
  EXPECT_EQ(ResistorWatts(0.5), 0.5);
  EXPECT_EQ(ResistorWatts(1.0 / 3), 0.5);
  EXPECT_EQ(MicaVolts(500), 500);
}

TEST(Texts, AreWhatPeopleOrderBy) {
  const struct {
    double farads;
    const char* text;
    const char* code;  // IEC 60062, letter and digit code: the letter stands for the decimal point
  } kFarads[] = {
      {47e-9, "0.047 uF", "47n"}, {4.7e-9, "0.0047 uF", "4n7"}, {470e-12, "470 pF", "470p"}, {4.7e-12, "4.7 pF", "4p7"},
      {22e-6, "22 uF", "22u"},    {2.2e-6, "2.2 uF", "2u2"},    {100e-9, "0.1 uF", "100n"},  {1e-6, "1 uF", "1u"},
  };
  for (const auto& c : kFarads) {
    EXPECT_EQ(FaradsText(c.farads), c.text);
    EXPECT_EQ(FaradsCode(c.farads), c.code);
  }
  const struct {
    double ohms;
    const char* text;
    const char* code;
  } kOhms[] = {
      {470e3, "470 kohm", "470K"}, {4.7e3, "4.7 kohm", "4K7"}, {2.2e6, "2.2 Mohm", "2M2"},
      {68, "68 ohm", "68R"},       {2.2, "2.2 ohm", "2R2"},    {1e6, "1 Mohm", "1M"},
  };
  for (const auto& c : kOhms) {
    EXPECT_EQ(OhmsText(c.ohms), c.text);
    EXPECT_EQ(OhmsCode(c.ohms), c.code);
  }
}

TEST(IsUsualValue, KnowsTheSeriesAndTheRoundValuesBeforeThem) {
  // E24 of IEC 60063; the round ones: common practice, no source.
  for (const double value : {0.047e-6, 0.05e-6, 250e-12, 8e-6, 20e-6, 1.25e-6, 9.1e3, 90e3, 470e3, 10e6}) {
    EXPECT_TRUE(IsUsualValue(value)) << value;
  }
  for (const double value : {0.65e-6, 0.0475e-6, 17e-6, 44e3, 8.8}) {
    EXPECT_FALSE(IsUsualValue(value)) << value;
  }
}

}  // namespace
}  // namespace benchleaf
