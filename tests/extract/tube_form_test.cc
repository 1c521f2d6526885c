#include "extract/tube_form.h"

#include <gtest/gtest.h>

namespace benchleaf::extract {
namespace {

TEST(TubeBase, TakesTheSuffixOff) {
  EXPECT_EQ(TubeBase("6SN7GTB"), "6SN7");
  EXPECT_EQ(TubeBase("21ZP4A"), "21ZP4");
  EXPECT_EQ(TubeBase("6J5GT/G"), "6J5");
  EXPECT_EQ(TubeBase("E88CC"), "E88CC");
  EXPECT_EQ(TubeBase("PL81A"), "PL81");
  EXPECT_EQ(TubeBase("80"), "80");
}

TEST(HasReceivingForm, FollowsTheDesignationOfReceivingTubes) {
  // RETMA ET-109-A, from memory: heater volts, letters without I and O, number of elements, suffixes.
  const struct {
    const char* text;
    bool is;
    const char* reason;
  } kCases[] = {
      {"6CB6A", true, "a revision"},           {"117Z3", true, "three figures of heater volts"},
      {"6AF11", true, "eleven elements"},      {"5Y3WGTA", true, "ruggedness, bulb and revision"},
      {"6IO7", false, "I and O are left out"}, {"6C86", false, "86 elements"},
      {"06A6", false, "a nought in front"},    {"6AU6Q", false, "no such suffix"},
  };
  for (const auto& one : kCases) {
    const auto parts = SplitNumberFirst(one.text);
    EXPECT_EQ(parts && HasReceivingForm(*parts), one.is) << one.text << ": " << one.reason;
  }
}

}  // namespace
}  // namespace benchleaf::extract
