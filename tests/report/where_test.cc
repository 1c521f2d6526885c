#include "benchleaf/report/where.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

TEST(WhereOnPage, NamesTheNinthInWhichTheMiddleLies) {
  struct Case {
    const char* why;
    FractionBox box;
    std::string where;
  };
  const std::vector<Case> cases = {
      {"upper left", {0.22, 0.13, 0.02, 0.02}, "upper left, 23 % across, 14 % down"},
      {"the middle counts, not the corner", {0.30, 0.30, 0.10, 0.10}, "centre, 35 % across, 35 % down"},
      {"top", {0.49, 0.0, 0.02, 0.02}, "top, 50 % across, 1 % down"},
      {"upper right", {0.9, 0.1, 0.02, 0.02}, "upper right, 91 % across, 11 % down"},
      {"left", {0.0, 0.49, 0.02, 0.02}, "left, 1 % across, 50 % down"},
      {"right", {0.98, 0.49, 0.02, 0.02}, "right, 99 % across, 50 % down"},
      {"lower left", {0.1, 0.9, 0.02, 0.02}, "lower left, 11 % across, 91 % down"},
      {"bottom", {0.5, 0.9, 0.02, 0.02}, "bottom, 51 % across, 91 % down"},
      {"the very corner is still on the page", {1, 1, 0, 0}, "lower right, 100 % across, 100 % down"},
      {"a box that claims to leave the page is held on it",
       {0.9, 0.9, 0.9, 0.9},
       "lower right, 100 % across, 100 % down"},
  };
  for (const Case& c : cases) EXPECT_EQ(WhereOnPage(c.box), c.where) << c.why;
}

}  // namespace
}  // namespace benchleaf
