#include "extract/misreading.h"

#include "extract/page_text.h"
#include "extract/part_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace benchleaf::extract {
namespace {

using ::testing::Contains;
using ::testing::IsEmpty;

double Cost(const std::string& read, const std::string& meant) {
  return MisreadingCost(read, meant, ShippedRules().tables());
}

TEST(MisreadingCost, RisesWithWhatABadScanSeldomDoes) {
  EXPECT_EQ(Cost("R101", "R101"), 0);
  EXPECT_LT(Cost("RI0I", "R101"), Cost("RS0S", "R101")) << "a stroke for a 1";
  EXPECT_LT(Cost("C18", "C13"), Cost("C12", "C13")) << "8 and 3 are printed alike";
  EXPECT_LT(Cost("c13", "C13"), Cost("G13", "C13")) << "a small letter";
  EXPECT_LT(Cost("C.13", "C13"), Cost("C713", "C13")) << "a speck";
  EXPECT_GT(Cost("", "C13"), 0);
  EXPECT_GT(Cost(std::string(40, 'R'), "R1"), 20) << "no designator at all";
}

TEST(MisreadingCost, NeedNotBeToldExactlyOnceItIsEnough) {
  const auto& tables = ShippedRules().tables();
  for (const char* read : {"R101", "RI0I", "c13", "C.13", "C7131", "", "XXXXXX", "R1", "R10155", "|R1O1"}) {
    for (const char* meant : {"R101", "C13", "R1"}) {
      const double cost = MisreadingCost(read, meant, tables);
      for (const double enough : {0.2, 1.0, 2.3, 5.0}) {
        const double told = MisreadingCost(read, meant, tables, enough);
        EXPECT_LE(told, cost) << read << ' ' << meant;
        EXPECT_TRUE(told == cost || told >= enough) << read << ' ' << meant << ' ' << enough;
      }
    }
  }
}

TEST(MayHold, KnowsLettersPrintedAlike) {
  EXPECT_TRUE(MayHold("K12", 'R', ShippedRules().tables()));
  EXPECT_FALSE(MayHold("V12", 'R', ShippedRules().tables()));
}

TEST(ClassesOfWord, KnowsPluralsAndSmallMisreadings) {
  const auto classes = [](const std::string& word) { return ClassesOfWord(word, ShippedRules().tables()); };
  // IEEE 315-1975 clause 22.4: C capacitor, R resistor, L coil, V electron tube.
  EXPECT_THAT(classes("Capacitor,"), Contains("C"));
  EXPECT_THAT(classes("RESISTORS"), Contains("R"));
  EXPECT_THAT(classes("Capaciior"), Contains("C"));
  EXPECT_THAT(classes("coil"), Contains("L"));
  EXPECT_THAT(classes("Tube"), Contains("V"));
  EXPECT_THAT(classes("cabinet"), IsEmpty());
  EXPECT_THAT(classes("10"), IsEmpty());
}

}  // namespace
}  // namespace benchleaf::extract
