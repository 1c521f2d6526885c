#include "benchleaf/core/edits.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(Edits, CountsLettersPutInLeftOutAndChanged) {
  EXPECT_EQ(EditsBetween("ASSEMBLY", "ASSEMBLY", 2), 0);
  EXPECT_EQ(EditsBetween("ASKMBLY", "ASSEMBLY", 2), 2);
  EXPECT_EQ(EditsBetween("UNIT", "UNITS", 2), 1);
  EXPECT_EQ(EditsBetween("", "UNIT", 4), 4);
}

TEST(Edits, StopsAtTheMost) {
  EXPECT_EQ(EditsBetween("CAPACITOR", "RESISTOR", 2), 3);
  EXPECT_EQ(EditsBetween("A", "ASSEMBLY", 2), 3);
}

}  // namespace
}  // namespace benchleaf
