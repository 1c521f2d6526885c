#include "scan-maker/degrade.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace benchleaf::scanmaker {
namespace {

constexpr Grade kGrades[] = {Grade::kClean, Grade::kMild, Grade::kMedium, Grade::kSevere};

// A page with one black box.
GreyImage PageWith(const Box& box) {
  GreyImage page(1500, 1200);
  for (int y = box.y; y < box.bottom(); ++y) std::fill_n(page.row(y) + box.x, box.width, std::uint8_t{0});
  return page;
}

TEST(DegradeTest, GivesTheSameBytesForTheSameSeedOnly) {
  const GreyImage page = PageWith({300, 300, 80, 40});
  for (const Grade grade : {Grade::kMild, Grade::kMedium, Grade::kSevere}) {
    EXPECT_EQ(Degrade(page, grade, 5).image, Degrade(page, grade, 5).image) << Name(grade);
    EXPECT_NE(Degrade(page, grade, 5).image, Degrade(page, grade, 6).image) << Name(grade);
  }
}

TEST(DegradeTest, LeavesACleanPageAlone) {
  const GreyImage page = PageWith({300, 300, 80, 40});
  EXPECT_EQ(Degrade(page, Grade::kClean, 5).image, page);
}

TEST(DegradeTest, ScalesToTheResolutionOfTheGrade) {
  const GreyImage page = PageWith({300, 300, 80, 40});
  const struct {
    Grade grade;
    double dpi;
    int width;
  } kCases[] = {
      {Grade::kClean, 300, 1500}, {Grade::kMild, 300, 1500}, {Grade::kMedium, 200, 1000}, {Grade::kSevere, 150, 750}};
  for (const auto& one : kCases) {
    const DegradedPage scan = Degrade(page, one.grade, 1);
    EXPECT_EQ(scan.dpi, one.dpi);
    EXPECT_EQ(scan.image.width, one.width);
  }
}

// The darkest place of the scan must be where Map says that the box has gone, far from the centre of the turn.
TEST(DegradeTest, MapsABoxToWhereItsInkHasGone) {
  for (const Box& box : {Box{100, 100, 90, 60}, Box{1300, 1050, 90, 60}}) {
    const GreyImage page = PageWith(box);
    for (const Grade grade : kGrades) {
      const DegradedPage scan = Degrade(page, grade, 11);
      const FractionBox mapped = scan.Map(box);
      const int x0 = static_cast<int>(mapped.x * scan.image.width);
      const int x1 = static_cast<int>((mapped.x + mapped.width) * scan.image.width);
      const int y0 = static_cast<int>(mapped.y * scan.image.height);
      const int y1 = static_cast<int>((mapped.y + mapped.height) * scan.image.height);
      long dark = 0;
      for (int y = y0; y < y1; ++y) {
        dark += std::count_if(scan.image.row(y) + x0, scan.image.row(y) + x1, [](int level) { return level < 110; });
      }
      EXPECT_GT(static_cast<double>(dark), 0.85 * (x1 - x0) * (y1 - y0)) << Name(grade);
    }
  }
}

TEST(DegradeTest, LeansBothWaysBySeed) {
  std::set<bool> leans;
  for (std::uint64_t seed = 1; seed <= 8; ++seed) {
    const DegradedPage scan = Degrade(PageWith({}), Grade::kMedium, seed);
    EXPECT_NEAR(std::abs(std::atan2(scan.yx, scan.xx)) * 180 / 3.14159265, 1.0, 1e-6);
    leans.insert(scan.yx > 0);
  }
  EXPECT_EQ(leans.size(), 2U);
}

TEST(DegradeTest, MakesSeverePagesOneBitAndTheOthersGrey) {
  const auto levels = [](const GreyImage& image) {
    return std::set<int>(image.pixels.begin(), image.pixels.end()).size();
  };
  const GreyImage page = PageWith({300, 300, 80, 40});
  EXPECT_EQ(levels(Degrade(page, Grade::kSevere, 1).image), 2U);
  EXPECT_GT(levels(Degrade(page, Grade::kMedium, 1).image), 50U);
}

}  // namespace
}  // namespace benchleaf::scanmaker
