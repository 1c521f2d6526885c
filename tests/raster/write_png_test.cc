#include "raster/sample_files.h"

#include "benchleaf/raster/page_source.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>

#include <csignal>
#include <iterator>
#include <string>

namespace benchleaf {
namespace {

using testing::HasSubstr;

ColorImage Pixel() { return {1, 1, {10, 20, 30}}; }

std::ptrdiff_t FilesIn(const std::filesystem::path& folder) {
  return std::distance(std::filesystem::directory_iterator(folder), std::filesystem::directory_iterator());
}

TEST(WritePngTest, WritesAPictureThatCanBeReadAgain) {
  const SampleFolder folder;
  const std::filesystem::path path = folder.path() / "a.png";
  ASSERT_TRUE(WritePng(path, Pixel()).has_value());
  const auto source = OpenScan(path, "a.png");
  ASSERT_TRUE(source.has_value());
  const auto image = (*source)->LoadColor(1, 10);
  ASSERT_TRUE(image.has_value());
  EXPECT_EQ(image->pixels, Pixel().pixels);
  EXPECT_EQ(FilesIn(folder.path()), 1) << "nothing is left beside it";
}

TEST(WritePngTest, TakesThePlaceOfAnOlderFile) {
  const SampleFolder folder;
  const std::filesystem::path path = folder.Write("a.png", "older");
  ASSERT_TRUE(WritePng(path, Pixel()).has_value());
  EXPECT_TRUE(OpenScan(path, "a.png").has_value());
}

TEST(WritePngTest, SaysWhereItCannotWrite) {
  const SampleFolder folder;
  const auto missing = WritePng(folder.path() / "none/a.png", Pixel());
  ASSERT_FALSE(missing.has_value());
  EXPECT_EQ(missing.error().code, ErrorCode::kIo);
  EXPECT_THAT(missing.error().source, HasSubstr("none/a.png"));
  std::filesystem::create_directory(folder.path() / "folder.png");
  EXPECT_FALSE(WritePng(folder.path() / "folder.png", Pixel()).has_value());
  EXPECT_FALSE(WritePng(folder.path() / "empty.png", ColorImage{}).has_value());
  EXPECT_EQ(FilesIn(folder.path()), 1);
}

TEST(WritePngTest, AWriteThatBreaksOffLeavesTheOlderFile) {
  const SampleFolder folder;
  const std::filesystem::path path = folder.Write("a.png", "older");
  ColorImage large{200, 200, std::vector<std::uint8_t>(200U * 200U * 3U)};
  for (std::size_t i = 0; i < large.pixels.size(); ++i) {
    large.pixels[i] = static_cast<std::uint8_t>(i * i % 251);
  }
  // A limit on the size of files breaks writing off as a full disk does.
  rlimit before{};
  getrlimit(RLIMIT_FSIZE, &before);
  rlimit tight = before;
  tight.rlim_cur = 1000;
  std::signal(SIGXFSZ, SIG_IGN);
  setrlimit(RLIMIT_FSIZE, &tight);
  const auto written = WritePng(path, large);
  setrlimit(RLIMIT_FSIZE, &before);
  std::signal(SIGXFSZ, SIG_DFL);
  ASSERT_FALSE(written.has_value());
  EXPECT_EQ(written.error().code, ErrorCode::kIo);
  EXPECT_EQ(std::filesystem::file_size(path), 5U);
  EXPECT_EQ(FilesIn(folder.path()), 1);
}

}  // namespace
}  // namespace benchleaf
