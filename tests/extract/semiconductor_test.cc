#include "extract/semiconductor.h"

#include "extract/page_text.h"

#include <gtest/gtest.h>

#include <string>

namespace benchleaf::extract {
namespace {

TEST(IsSemiconductor, KnowsJedecTypes) {
  // JEDEC type registration (EIA RS-370).
  for (const char* type : {"1N34A", "1N4148", "2N2222", "2N2222A", "3N128", "4N25", "1N60"}) {
    EXPECT_TRUE(IsSemiconductor(type)) << type;
  }
}

TEST(IsSemiconductor, KnowsJapaneseTypes) {
  // JIS C 7012.
  for (const char* type : {"1S1588", "2SA234", "2SC1815Y", "3SK45", "2SB77"}) {
    EXPECT_TRUE(IsSemiconductor(type)) << type;
  }
}

TEST(IsSemiconductor, KnowsProElectronTypes) {
  // Pro Electron type designation code for semiconductors, and the older one with O.
  for (const char* type : {"AC128", "BC107B", "BY127", "BZX79", "OA79", "OC71"}) {
    EXPECT_TRUE(IsSemiconductor(type)) << type;
  }
}

TEST(IsSemiconductor, RefusesOthers) {
  for (const char* type :
       {"6N7", "1N5GT", "OA2", "1S5", "AR12", "BT1", "2N", "1N0", "12AX7", "A4C12", "", "BC1", "2SX"}) {
    EXPECT_FALSE(IsSemiconductor(type)) << type;
  }
}

TEST(SemiconductorLookingLike, RepairsWhatTheTypeNumbersRuleOut) {
  const struct {
    const char* read;
    const char* type;  // "-" for none
    const char* reason;
  } kCases[] = {
      {"IN34A", "1N34A", "a stroke for the one"},
      {"lN60", "1N60", "a small l for the one"},
      {"2N4O4", "2N404", "a ring between figures"},
      {"ZN404", "2N404", "a Z for the two"},
      {"25C458", "2SC458", "a 5 for the S"},
      {"2SC18I5", "2SC1815", "a stroke between figures"},
      {"2N404", "2N404", "right already"},
      {"IN", "-", "no number"},
      {"INPUT", "-", "a word"},
      {"25V", "-", "a value"},
      {"Z5C4S8", "-", "too much is guessed"},
      {"R12", "-", "a designator"},
      {"", "-", "empty"},
  };
  for (const auto& one : kCases) {
    const auto repaired = SemiconductorLookingLike(one.read, ShippedRules().tables());
    EXPECT_EQ(repaired ? repaired->type : "-", one.type) << one.read << ": " << one.reason;
  }
}

}  // namespace
}  // namespace benchleaf::extract
