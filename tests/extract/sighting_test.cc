#include "benchleaf/extract/sighting.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(TermKindNames, AreThoseOfTheExportAndGoBothWays) {
  EXPECT_EQ(Name(TermKind::kDesignator), "designator");
  EXPECT_EQ(Name(TermKind::kTube), "tube");
  EXPECT_EQ(Name(TermKind::kPartNumber), "part-number");
  EXPECT_EQ(Name(TermKind::kSemiconductor), "semiconductor");
  EXPECT_EQ(Name(TermKind::kValue), "value");
  for (const TermKind kind :
       {TermKind::kDesignator, TermKind::kTube, TermKind::kPartNumber, TermKind::kSemiconductor, TermKind::kValue}) {
    EXPECT_EQ(TermKindNamed(Name(kind)), kind);
  }
  EXPECT_FALSE(TermKindNamed("resistor").has_value());
}

}  // namespace
}  // namespace benchleaf
