#include "gaps/value_rounding.h"

#include <gtest/gtest.h>

namespace benchleaf::gaps {
namespace {

// The series: IEC 60063:2015, tables of E6, E12 and E24.
TEST(IsRounding, TakesAnOldRoundValueAndItsPreferredOne) {
  const struct {
    double a;
    double b;
    bool rounding;
    const char* why;
  } kCases[] = {
      {0.05, 0.047, true, "E12"},
      {0.047, 0.05, true, "either way round"},
      {0.02, 0.022, true, "E12"},
      {0.25, 0.22, true, "E6"},
      {0.25, 0.27, true, "E12"},
      {250, 240, true, "E24"},
      {50000, 47000, true, "ohms as well"},
      {5, 4.7, true, "of any decade"},
      {0.05, 0.056, false, "two steps off"},
      {0.05, 0.05, false, "the same"},
      {0.05, 0.5, false, "another decade"},
      {0.047, 0.056, false, "both are preferred: two parts"},
      {3300, 3900, false, "both are preferred"},
      {0.01, 0.012, false, "both are preferred"},
      {0, 1, false, "no value"},
      {-1, 1, false, "no value"},
  };
  for (const auto& one : kCases) EXPECT_EQ(IsRounding(one.a, one.b), one.rounding) << one.a << " " << one.why;
}

}  // namespace
}  // namespace benchleaf::gaps
