#include "benchleaf/core/figure.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(Figure, HasNoNoughtsAtItsEnd) {
  EXPECT_EQ(Figure(6.3), "6.3");
  EXPECT_EQ(Figure(5), "5");
  EXPECT_EQ(Figure(0.15), "0.15");
  EXPECT_EQ(Figure(0.1 + 0.2), "0.3");
}

}  // namespace
}  // namespace benchleaf
