#include "extract/page_bands.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstddef>
#include <random>
#include <utility>
#include <vector>

namespace benchleaf::extract {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::SizeIs;

TEST(PageBands, FindWhateverSharesHeight) {
  std::mt19937 dice(1);
  constexpr double kPage = 3000;
  PageBands bands(kPage, 400);
  std::vector<std::pair<double, double>> things;
  for (std::size_t i = 0; i < 400; ++i) {
    const double top = static_cast<double>(dice() % 3200) - 100;  // some beyond the page
    things.emplace_back(top, top + static_cast<double>(dice() % 300));
    bands.Add(i, top, things.back().second);
  }
  for (std::size_t i = 0; i < things.size(); ++i) {
    const auto found = bands.Beside(things[i].first, things[i].second);
    for (std::size_t other = 0; other < things.size(); ++other) {
      if (things[other].first <= things[i].second && things[i].first <= things[other].second) {
        ASSERT_THAT(found, Contains(other)) << i;
      }
    }
  }
}

TEST(PageBands, LeaveOutWhatIsFarAway) {
  PageBands bands(4000, 400);
  for (std::size_t i = 0; i < 400; ++i) {
    bands.Add(i, 10.0 * static_cast<double>(i), 10.0 * static_cast<double>(i) + 8);
  }
  EXPECT_THAT(bands.Beside(2000, 2008), SizeIs(testing::Lt(20U)));
}

TEST(PageBands, FindWhatHasMovedInItsNewPlace) {
  PageBands bands(1000, 100);
  bands.Add(0, 500, 510);
  bands.Add(0, 100, 110);
  bands.Add(0, 900, 910);
  EXPECT_THAT(bands.Beside(900, 910), ElementsAre(0));
  EXPECT_THAT(bands.Beside(100, 110), ElementsAre(0));
}

TEST(PageBands, TakeAnEmptyPage) { EXPECT_TRUE(PageBands(0, 0).Beside(0, 100).empty()); }

}  // namespace
}  // namespace benchleaf::extract
