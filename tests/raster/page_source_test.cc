#include "benchleaf/raster/page_source.h"

#include "raster/sample_files.h"

#include "benchleaf/pixels/image_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <string>

namespace benchleaf {
namespace {

TEST(OpenScanTest, GoesByContentAndNotByName) {
  SamplePdf pdf;
  pdf.AddPage("0 0 48 72", "", "0 0 24 36 re f");
  const SampleFolder folder;
  const struct {
    const char* name;
    std::string bytes;
  } kCases[] = {
      {"a.png", SampleTiff({NoisePicture(9, 9)}, 100)},
      {"a.pdf", EncodePng(ColorImage{1, 1, {1, 2, 3}})},
      {"a.tif", pdf.Finish()},
      {"a.jpg", "\r\n\r\n" + pdf.Finish()},  // blank lines before the header, as some programs leave
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.name);
    const auto source = OpenScan(folder.Write(c.name, c.bytes), c.name);
    ASSERT_TRUE(source.has_value()) << source.error().ToString();
    EXPECT_EQ((*source)->page_count(), 1);
    const auto page = (*source)->Load(1);
    ASSERT_TRUE(page.has_value()) << page.error().ToString();
    EXPECT_FALSE(page->image.empty());
  }
}

TEST(OpenScanTest, SaysWhyAFileCannotBeOpened) {
  const SampleFolder folder;
  folder.Write("empty.pdf", "");
  folder.Write("letter.pdf", "Dear Sir, the set arrived yesterday.");
  folder.Write("short.png", "\x89P");
  folder.Write("moving.png", "GIF89a, which no scanner writes");
  std::filesystem::create_directory(folder.path() / "folder.pdf");
  ASSERT_EQ(mkfifo((folder.path() / "pipe.pdf").c_str(), 0600), 0);
  const struct {
    const char* name;
    ErrorCode code;
  } kCases[] = {
      {"none.pdf", ErrorCode::kMissing},       {"empty.pdf", ErrorCode::kEmpty},
      {"letter.pdf", ErrorCode::kDamaged},     {"short.png", ErrorCode::kDamaged},
      {"moving.png", ErrorCode::kUnsupported}, {"folder.pdf", ErrorCode::kUnsupported},
      {"pipe.pdf", ErrorCode::kUnsupported},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.name);
    const auto source = OpenScan(folder.path() / c.name, std::string("set/") + c.name);
    ASSERT_FALSE(source.has_value());
    EXPECT_EQ(source.error().code, c.code) << source.error().message;
    EXPECT_EQ(source.error().source, std::string("set/") + c.name);
    EXPECT_EQ(source.error().page, 0);
    EXPECT_FALSE(source.error().message.empty());
  }
}

TEST(OpenScanTest, RefusesAFileOverTheLimit) {
  const SampleFolder folder;
  RasterLimits limits;
  limits.max_file_bytes = 10;
  const auto source = OpenScan(folder.Write("a.png", EncodePng(ColorImage{1, 1, {1, 2, 3}})), "a.png", limits);
  ASSERT_FALSE(source.has_value());
  EXPECT_EQ(source.error().code, ErrorCode::kTooLarge);
}

}  // namespace
}  // namespace benchleaf
