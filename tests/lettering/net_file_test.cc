#include "lettering/net_file.h"

#include "reader-training/trainer/write_net.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace benchleaf {
namespace {

// One layer that pools a whole step, and the blank and two characters.
Net SmallNet() {
  Net net;
  net.characters = {"R", "\u03a9"};
  NetLayer pool;
  pool.in = pool.out = 1;
  pool.pool_rows = 32;
  pool.pool_columns = 4;
  pool.weights = {-2.5F};
  pool.bias = {0.25F};
  NetLayer last;
  last.in = 1;
  last.out = 3;
  last.kernel_columns = 3;
  last.rectified = false;
  last.weights = {1.27F, -0.5F, 0.01F, 0, 0, 0, 12.7F, 0.1F, -12.7F};
  last.bias = {1, -1, 0.125F};
  net.layers = {pool, last};
  return net;
}

TEST(WrittenNet, IsReadAgain) {
  const std::filesystem::path file = std::filesystem::path(testing::TempDir()) / "small.net";
  const Net written = SmallNet();
  training::WriteNet(file, written);
  const Result<Net> read = LoadNet(file);
  std::filesystem::remove(file);
  ASSERT_TRUE(read) << read.error().ToString();
  EXPECT_EQ(read->characters, written.characters);
  ASSERT_EQ(read->layers.size(), written.layers.size());
  for (std::size_t i = 0; i < written.layers.size(); ++i) {
    const NetLayer& layer = read->layers[i];
    const NetLayer& meant = written.layers[i];
    EXPECT_EQ(layer.in, meant.in);
    EXPECT_EQ(layer.out, meant.out);
    EXPECT_EQ(layer.kernel_columns, meant.kernel_columns);
    EXPECT_EQ(layer.rectified, meant.rectified);
    EXPECT_EQ(layer.pool_columns, meant.pool_columns);
    EXPECT_EQ(layer.bias, meant.bias);
    ASSERT_EQ(layer.weights.size(), meant.weights.size());
    for (std::size_t k = 0; k < meant.weights.size(); ++k) {
      EXPECT_FLOAT_EQ(layer.weights[k], meant.weights[k]) << "layer " << i << ", weight " << k;
    }
  }
}

}  // namespace
}  // namespace benchleaf
