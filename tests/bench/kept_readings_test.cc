#include "bench/kept_readings.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

namespace benchleaf::bench {
namespace {

class KeptReadingsTest : public testing::Test {
 protected:
  void TearDown() override { std::filesystem::remove_all(folder_); }

  PageReading Get(const KeptReadings& kept, const char* word) {
    return kept.Get("page", [&] {
      PageReading reading;
      reading.words.push_back({word, {1, 2, 3, 4}, 0, 1, WordOrigin::kString, {}});
      return reading;
    });
  }

  const std::filesystem::path folder_ = std::filesystem::path(testing::TempDir()) / "kept-readings";
};

TEST_F(KeptReadingsTest, ReadsOnceOnly) {
  EXPECT_EQ(Get(KeptReadings(folder_), "R1").words.at(0).text, "R1");
  EXPECT_EQ(Get(KeptReadings(folder_), "R2").words.at(0).text, "R1");
}

TEST_F(KeptReadingsTest, KeepsNothingWithoutAFolder) {
  const KeptReadings kept("");
  EXPECT_EQ(Get(kept, "R1").words.at(0).text, "R1");
  EXPECT_EQ(Get(kept, "R2").words.at(0).text, "R2");
}

TEST_F(KeptReadingsTest, SaysWhichFileIsDamaged) {
  const KeptReadings kept(folder_);
  std::ofstream(folder_ / "page.cbor") << "no reading";
  EXPECT_THROW(Get(kept, "R1"), std::runtime_error);
}

}  // namespace
}  // namespace benchleaf::bench
