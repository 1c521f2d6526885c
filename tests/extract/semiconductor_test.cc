#include "extract/semiconductor.h"

#include <gtest/gtest.h>

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

}  // namespace
}  // namespace benchleaf::extract
