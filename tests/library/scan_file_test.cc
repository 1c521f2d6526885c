#include "library/scan_file.h"

#include "library/library_on_disk.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

TEST(ScanFileTest, KnowsScansByName) {
  for (const char* name : {"a.pdf", "a.PDF", "a.tif", "a.TiFF", "a.png", "a.jpg", "b/a.JPEG"}) {
    EXPECT_TRUE(HasScanName(name)) << name;
  }
  for (const char* name : {"a.txt", "pdf", ".pdf", "a.pdf.bak", "a.djvu", ""}) {
    EXPECT_FALSE(HasScanName(name)) << name;
  }
}

TEST(ScanFileTest, TellsTheFormatByContent) {
  const struct {
    std::string bytes;
    std::optional<ScanFormat> format;
    const char* reason;
  } kCases[] = {
      {"%PDF-1.7", ScanFormat::kPdf, "a PDF"},
      {"\r\n\r\n%PDF-1.7", ScanFormat::kPdf, "blank lines before the header"},
      {std::string(1024, ' ') + "%PDF-", ScanFormat::kPdf, "the latest header that counts"},
      {std::string(1025, ' ') + "%PDF-", std::nullopt, "a header too late"},
      {std::string("II*\0", 4), ScanFormat::kTiff, "TIFF, low byte first"},
      {std::string("MM\0*", 4), ScanFormat::kTiff, "TIFF, high byte first"},
      {std::string("II+\0", 4), ScanFormat::kTiff, "BigTIFF"},
      {"\x89PNG\r\n\x1A\n", ScanFormat::kPng, "PNG"},
      {"\xFF\xD8\xFF\xDB", ScanFormat::kJpeg, "JPEG"},
      {"\x89PNG\n\x1A\n", std::nullopt, "a PNG spoilt by a text transfer"},
      {"%PDF", std::nullopt, "cut short"},
      {"a text about %PDF", std::nullopt, "text"},
      {"", std::nullopt, "nothing"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    EXPECT_EQ(FormatOfContent(std::vector<std::uint8_t>(c.bytes.begin(), c.bytes.end())), c.format);
  }
}

TEST(ScanFileTest, InspectsAFileWhoseNameIsWrong) {
  const LibraryOnDisk disk;
  disk.Write("a.pdf", "\x89PNG\r\n\x1A\n");
  const auto scan = InspectScan(disk.root(), "a.pdf");
  ASSERT_TRUE(scan.has_value()) << scan.error().ToString();
  EXPECT_EQ(scan->format, ScanFormat::kPng);
  EXPECT_EQ(scan->size_bytes, 8U);
  // sha256sum of the eight bytes of the PNG signature.
  EXPECT_EQ(scan->hash, "4c4b6a3be1314ab86138bef4314dde022e600960d8689a2c8f8631802d20dab6");
}

TEST(ScanFileTest, HashesFilesLargerThanItsBuffer) {
  const LibraryOnDisk disk;
  const std::string large = "%PDF-1.4\n" + std::string(3U << 18U, 'x');
  disk.Write("a.pdf", large);
  disk.Write("b.pdf", large + 'y');
  const auto a = InspectScan(disk.root(), "a.pdf");
  const auto b = InspectScan(disk.root(), "b.pdf");
  ASSERT_TRUE(a.has_value() && b.has_value());
  EXPECT_EQ(a->size_bytes, large.size());
  EXPECT_NE(a->hash, b->hash);
}

TEST(ScanFileTest, SaysWhyAFileIsNoScan) {
  const LibraryOnDisk disk;
  disk.Write("empty.pdf", "");
  disk.Write("text.pdf", "a letter");
  ASSERT_EQ(mkfifo((disk.root() / "pipe.pdf").c_str(), 0600), 0);
  const struct {
    const char* path;
    ErrorCode code;
  } kCases[] = {
      {"empty.pdf", ErrorCode::kEmpty},
      {"text.pdf", ErrorCode::kDamaged},
      {"pipe.pdf", ErrorCode::kUnsupported},  // opening it would wait for ever
      {"none.pdf", ErrorCode::kMissing},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.path);
    const auto scan = InspectScan(disk.root(), c.path);
    ASSERT_FALSE(scan.has_value());
    EXPECT_EQ(scan.error().code, c.code);
    EXPECT_EQ(scan.error().source, c.path);
  }
}

}  // namespace
}  // namespace benchleaf
