#include "benchleaf/work/copy_manual.h"

#include "places/places.h"
#include "work/copy_plan.h"
#include "work/programs.h"
#include "work/protocol.h"

#include "benchleaf/raster/page_source.h"

#include <gtest/gtest.h>

#include <cstddef>
#include <cstdint>
#include <fstream>
#include <iterator>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

fs::path WriteScan(const TemporaryFolder& folder) {
  ColorImage image;
  image.width = 300;
  image.height = 200;
  image.pixels.assign(std::size_t{300} * 200 * 3, 200);
  fs::path path = folder.path() / "scan.png";
  EXPECT_TRUE(WritePng(path, image));
  return path;
}

std::size_t FilesIn(const TemporaryFolder& folder) {
  return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder.path()), fs::directory_iterator()));
}

TEST(CopyPlan, ComesBackAsItWas) {
  const std::vector<PageToCopy> pages = {{"/library/a b.pdf",
                                          "a b.pdf",
                                          3,
                                          150.25,
                                          {{"C112", {0.1, 0.2}, {0.3, 0.2}, {0.1, 0.18}}, {"\u03A9", {}, {}, {}}}},
                                         {"/library/c.png", "c.png", 1, 0, {}}};
  const auto decoded = DecodeCopyPlan(EncodeCopyPlan(pages));
  ASSERT_TRUE(decoded);
  ASSERT_EQ(decoded->size(), 2U);
  EXPECT_EQ(decoded->at(0).path, pages[0].path);
  EXPECT_EQ(decoded->at(0).dpi, 150.25);
  EXPECT_EQ(decoded->at(0).words.at(0).text, "C112");
  EXPECT_NEAR(decoded->at(0).words.at(0).end.x, 0.3, 1e-6);
  EXPECT_EQ(decoded->at(1).words.size(), 0U);
}

TEST(CopyPlan, CutShortAnywhereIsRefused) {
  const std::string plan = EncodeCopyPlan({{"/a.pdf", "a.pdf", 1, 150, {{"C1", {}, {}, {}}}}});
  for (std::size_t length = 0; length < plan.size(); ++length) EXPECT_FALSE(DecodeCopyPlan(plan.substr(0, length)));
  EXPECT_FALSE(DecodeCopyPlan(plan + "x"));
}

TEST(CopyManual, WritesTheCopyAndLeavesNothingElse) {
  const TemporaryFolder folder;
  const fs::path scan = WriteScan(folder);
  const std::atomic<bool> never{false};
  const auto left_out = CopyManual({{scan, "scan.png", 1, 100, {{"C112", {0.1, 0.2}, {0.3, 0.2}, {0.1, 0.1}}}}},
                                   folder.path() / "copy.pdf", {SourceFolder() / "config", PageWorker()}, never);
  ASSERT_TRUE(left_out) << left_out.error().ToString();
  EXPECT_TRUE(left_out->empty());
  EXPECT_EQ(FilesIn(folder), 2U);
  const auto copy = OpenScan(folder.path() / "copy.pdf", "copy.pdf");
  ASSERT_TRUE(copy) << copy.error().ToString();
  const auto page = (*copy)->Load(1);
  ASSERT_TRUE(page);
  ASSERT_EQ(page->layer.size(), 1U);
  EXPECT_EQ(page->layer.front().text, "C112");
}

TEST(CopyManual, TellsOfEachPageAsItIsTaken) {
  const TemporaryFolder folder;
  const fs::path scan = WriteScan(folder);
  const std::atomic<bool> never{false};
  std::vector<std::string> taken;
  CopyOptions options{SourceFolder() / "config", PageWorker()};
  options.taken = [&](const PageToCopy& page) { taken.push_back(page.name + ' ' + std::to_string(page.page)); };
  const auto left_out =
      CopyManual({{scan, "scan.png", 1, 100, {}}, {scan, "scan.png", 2, 100, {}}, {scan, "again.png", 1, 100, {}}},
                 folder.path() / "copy.pdf", options, never);
  ASSERT_TRUE(left_out) << left_out.error().ToString();
  EXPECT_EQ(left_out->size(), 1U) << "the picture has one page";
  EXPECT_EQ(taken, (std::vector<std::string>{"scan.png 1", "scan.png 2", "again.png 1"}));
}

TEST(CopyManual, ALongCopyComesInPieces) {
  const TemporaryFolder folder;
  ColorImage noise;
  noise.width = 2400;
  noise.height = 2400;
  std::uint32_t state = 1;
  for (int i = 0; i < noise.width * noise.height * 3; ++i) {
    state = state * 1664525U + 1013904223U;  // Numerical Recipes' generator
    noise.pixels.push_back(static_cast<std::uint8_t>(state >> 24U));
  }
  const fs::path scan = folder.path() / "noise.png";
  ASSERT_TRUE(WritePng(scan, noise));
  const fs::path out = folder.path() / "copy.pdf";
  const std::atomic<bool> never{false};
  const auto left_out =
      CopyManual({{scan, "noise.png", 1, 200, {}}}, out, {SourceFolder() / "config", PageWorker()}, never);
  ASSERT_TRUE(left_out) << left_out.error().ToString();
  EXPECT_GT(fs::file_size(out), kCopyPieceBytes);
  EXPECT_TRUE(OpenScan(out, "copy.pdf"));
}

TEST(CopyManual, ThatFailsOrIsStoppedLeavesWhatWasThere) {
  const TemporaryFolder folder;
  const fs::path scan = WriteScan(folder);
  const fs::path out = folder.path() / "copy.pdf";
  std::ofstream(out) << "mine";
  const CopyOptions options{SourceFolder() / "config", PageWorker()};
  const std::atomic<bool> never{false};
  const auto missing = CopyManual({{folder.path() / "gone.pdf", "gone.pdf", 1, 0, {}}}, out, options, never);
  ASSERT_FALSE(missing);
  const std::atomic<bool> stopped{true};
  const auto cancelled = CopyManual({{scan, "scan.png", 1, 0, {}}}, out, options, stopped);
  ASSERT_FALSE(cancelled);
  EXPECT_EQ(cancelled.error().code, ErrorCode::kCancelled);
  EXPECT_EQ(fs::file_size(out), 4U);
  EXPECT_EQ(FilesIn(folder), 2U);
}

}  // namespace
}  // namespace benchleaf
