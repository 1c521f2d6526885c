#include "bench/printed_reading.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace benchleaf::bench {
namespace {

TEST(PrintedReadingTest, GivesEveryWordItsShareOfTheBox) {
  scanmaker::MadePage page;
  page.image = GreyImage(400, 200);
  page.printed = {{"470K, 1/2", {200, 50, 90, 20}, 0}, {"R1", {10, 50, 20, 20}, 0}};
  const PageReading reading = ReadingAsPrinted(page);
  ASSERT_EQ(reading.words.size(), 3U);
  EXPECT_EQ(reading.words[0].text, "R1") << "from left to right";
  EXPECT_EQ(reading.words[1].text, "470K,");
  EXPECT_EQ(reading.words[1].box, (Box{200, 50, 50, 20}));
  EXPECT_EQ(reading.words[2].box, (Box{260, 50, 30, 20}));
  EXPECT_EQ(reading.frame.level_width, 400);
}

}  // namespace
}  // namespace benchleaf::bench
