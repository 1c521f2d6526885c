#include "benchleaf/tubes/stand_ins.h"

#include "tubes/shipped_table.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf {
namespace {

std::string Text(const std::optional<StandIn>& found) {
  if (!found) return "none";
  return std::string(Name(found->standing)) + (found->by_suffix ? ", by suffix" : "") +
         (found->heater_differs ? ", heater differs" : "");
}

// Against the shipped table, whose rows are from handbooks and registrations as they say themselves.
TEST(StandIns, FollowsTheTable) {
  const struct {
    const char* why;
    const char* wanted;
    const char* type;
    const char* standing;
  } kCases[] = {
      {"the type itself", "6AU6", "6AU6", "same tube"},
      {"its European name", "12AX7", "ECC83", "same tube"},
      {"two names of one tube", "12AX7/ECC83", "12AX7", "same tube"},
      {"either of two names on the glass", "12AX7", "ECC83/7025", "same tube"},
      {"a letter O for the nought", "0A2", "OA2", "same tube"},
      {"a later revision serves", "6AU6", "6AU6A", "later or better type"},
      {"an earlier one only where its ratings suffice", "6AU6A", "6AU6", "earlier or plainer form"},
      {"a revision of a revision", "6SN7GT", "6SN7GTB", "later or better type"},
      {"through another name of the same tube", "EF94", "6AU6A", "later or better type"},
      {"an industrial version", "6AU6", "6136", "industrial or military version"},
      {"an industrial version of other heater current", "12AX7", "5751",
       "industrial or military version, heater differs"},
      {"the plain form of an industrial version", "5751", "12AX7", "earlier or plainer form, heater differs"},
      {"a service number", "6SN7GT", "VT231", "same tube"},
      {"a service mark in front", "5751", "JAN-5751", "same tube"},
      {"another heater string", "6CB6", "3CB6", "other heater, heater differs"},
      {"another heater string of a later form", "12AU6", "6AU6", "other heater, heater differs"},
      {"no relation", "6AU6", "6AL5", "none"},
  };
  for (const auto& c : kCases) {
    EXPECT_EQ(Text(StandIns(c.wanted, ShippedTubes()).Find(c.type)), c.standing)
        << c.why << ": " << c.type << " for " << c.wanted;
  }
}

// Types that exist in no table: RETMA/EIA practice of suffixes, from memory.
TEST(StandIns, TakesTheSuffixWhereTheTableIsSilent) {
  const struct {
    const char* wanted;
    const char* type;
    const char* standing;
  } kCases[] = {
      {"6QZ9", "6QZ9A", "later or better type, by suffix"},
      {"6QZ9A", "6QZ9B", "later or better type, by suffix"},
      {"6QZ9B", "6QZ9A", "earlier or plainer form, by suffix"},
      {"6QZ9A", "6QZ9", "earlier or plainer form, by suffix"},
      {"6QZ9", "6QZ9GT", "same tube, by suffix"},
      {"6QZ9GT", "6QZ9GTB", "later or better type, by suffix"},
      {"6QZ9", "6QZ9W", "industrial or military version, by suffix"},
      {"6QZ9W", "6QZ9", "earlier or plainer form, by suffix"},
      {"6QZ9", "6QZ8", "none"},
      {"RECTIFIER", "RECTIFIERA", "none"},
  };
  for (const auto& c : kCases) {
    EXPECT_EQ(Text(StandIns(c.wanted, ShippedTubes()).Find(c.type)), c.standing) << c.type << " for " << c.wanted;
  }
}

TEST(StandIns, ServesOnlyWhereNothingHasToBeLookedAt) {
  EXPECT_TRUE(Serves(Standing::kSame));
  EXPECT_TRUE(Serves(Standing::kServes));
  EXPECT_TRUE(Serves(Standing::kIndustrial));
  EXPECT_FALSE(Serves(Standing::kEarlier));
  EXPECT_FALSE(Serves(Standing::kOtherHeater));
}

}  // namespace
}  // namespace benchleaf
