#include "benchleaf/work/page_viewer.h"

#include "places/places.h"
#include "work/programs.h"

#include "benchleaf/raster/page_source.h"

#include <gtest/gtest.h>

#include <cstddef>

namespace benchleaf {
namespace {

// 400 x 300 px, each pixel's green its column.
std::filesystem::path WriteStripes(const TemporaryFolder& folder) {
  ColorImage image;
  image.width = 400;
  image.height = 300;
  for (int y = 0; y < image.height; ++y) {
    for (int x = 0; x < image.width; ++x) {
      image.pixels.insert(image.pixels.end(), {0, static_cast<std::uint8_t>(x / 2), 0});
    }
  }
  const std::filesystem::path path = folder.path() / "stripes.png";
  EXPECT_TRUE(WritePng(path, image));
  return path;
}

TEST(PageViewer, GivesAPageAndItsParts) {
  const TemporaryFolder folder;
  const auto path = WriteStripes(folder);
  PageViewer viewer(PageWorker(), SourceFolder() / "config");
  const auto small = viewer.View(path, "stripes.png", 1, {{}, 100});
  ASSERT_TRUE(small) << small.error().ToString();
  EXPECT_EQ(small->page_width, 400);
  EXPECT_EQ(small->page_height, 300);
  EXPECT_EQ(small->image.width, 100);
  EXPECT_EQ(small->image.height, 75);
  const auto part = viewer.View(path, "stripes.png", 1, {{120, 10, 20, 5}, 100});
  ASSERT_TRUE(part) << part.error().ToString();
  EXPECT_EQ(part->image.width, 20);
  EXPECT_EQ(part->image.height, 5);
  EXPECT_EQ(part->image.pixels.at(1), 60);
}

TEST(PageViewer, NamesWhatCannotBeShown) {
  const TemporaryFolder folder;
  const auto path = WriteStripes(folder);
  PageViewer viewer(PageWorker(), SourceFolder() / "config");
  const auto beyond = viewer.View(path, "stripes.png", 9, {{}, 100});
  ASSERT_FALSE(beyond);
  EXPECT_EQ(beyond.error().ToString(), "stripes.png, page 9: there is no such page; the last one is 1");
  const auto off = viewer.View(path, "stripes.png", 1, {{500, 0, 10, 10}, 100});
  ASSERT_FALSE(off);
  EXPECT_EQ(off.error().code, ErrorCode::kUsage);
}

TEST(PageViewer, AWorkerThatDiesIsNamed) {
  const TemporaryFolder folder;
  const auto path = folder.WriteScan("crash.pdf", "on 1 any crash");
  PageViewer viewer(FakeWorker(), SourceFolder() / "config");
  const auto view = viewer.View(path, "crash.pdf", 1, {{}, 100});
  ASSERT_FALSE(view);
  EXPECT_EQ(view.error().code, ErrorCode::kCrashed);
  EXPECT_EQ(view.error().page, 1);
}

}  // namespace
}  // namespace benchleaf
