#include "benchleaf/extract/extract.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace benchleaf {
namespace {

using ::testing::ElementsAre;

TEST(DesignatorForms, GivesThePartWithoutAssemblyAndSection) {
  EXPECT_THAT(DesignatorForms("C12"), ElementsAre("C12"));
  EXPECT_THAT(DesignatorForms("A4C12"), ElementsAre("A4C12", "C12"));
  EXPECT_THAT(DesignatorForms("C1A"), ElementsAre("C1A", "C1"));
  EXPECT_THAT(DesignatorForms("A4A1C1A"), ElementsAre("A4A1C1A", "C1A", "A4A1C1", "C1"));
  EXPECT_THAT(DesignatorForms("A4"), ElementsAre("A4"));
  EXPECT_THAT(DesignatorForms("R-12"), ElementsAre("R-12", "R12")) << "as old sets print it";
  EXPECT_THAT(DesignatorForms(""), ::testing::IsEmpty());
}

TEST(TubeForms, GivesTheTypeFirstAndThenItsShorterForms) {
  EXPECT_THAT(TubeForms("6CB6A"), ElementsAre("6CB6A", "6CB6"));
  EXPECT_THAT(TubeForms("12AX7A/ECC83"), ElementsAre("12AX7A/ECC83", "12AX7A", "12AX7", "ECC83"));
  EXPECT_THAT(TubeForms("6SN7GTB"), ElementsAre("6SN7GTB", "6SN7GT", "6SN7"));
  EXPECT_THAT(TubeForms("6J5GT/G"), ElementsAre("6J5GT/G", "6J5GT", "6J5"));
  EXPECT_THAT(TubeForms("21ZP4A"), ElementsAre("21ZP4A", "21ZP4"));
  EXPECT_THAT(TubeForms("5U4"), ElementsAre("5U4"));
  EXPECT_THAT(TubeForms("E88CC"), ElementsAre("E88CC"));
}

}  // namespace
}  // namespace benchleaf
