#include "raster/picture_source.h"

#include "raster/sample_files.h"

#include "benchleaf/pixels/image_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

using testing::HasSubstr;

ColorImage Red(int width, int height) {
  ColorImage image;
  image.width = width;
  image.height = height;
  for (int i = 0; i < width * height; ++i) {
    image.pixels.insert(image.pixels.end(), {255, 0, 0});
  }
  return image;
}

TEST(PictureSourceTest, GivesEveryPageOfATiff) {
  const std::vector<GreyImage> pages = {NoisePicture(60, 40), NoisePicture(7, 9), NoisePicture(1, 1)};
  const SampleFolder folder;
  const auto source = OpenScan(folder.Write("a.tif", SampleTiff(pages, 200)), "a.tif");
  ASSERT_TRUE(source.has_value()) << source.error().ToString();
  ASSERT_EQ((*source)->page_count(), 3);
  for (int i = 3; i >= 1; --i) {
    const auto page = (*source)->Load(i);
    ASSERT_TRUE(page.has_value()) << page.error().ToString();
    EXPECT_TRUE(page->image == pages[static_cast<std::size_t>(i) - 1]);
    EXPECT_DOUBLE_EQ(page->dpi, 200);
    EXPECT_TRUE(page->layer.empty());
  }
}

TEST(PictureSourceTest, TakesOnlyABelievableResolution) {
  const struct {
    unsigned stated;
    double dpi;
  } kCases[] = {{0, 0}, {1, 0}, {49, 0}, {50, 50}, {150, 150}, {2400, 2400}, {2401, 0}, {65000, 0}};
  const SampleFolder folder;
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.stated);
    const auto source = OpenScan(folder.Write("a.tif", SampleTiff({NoisePicture(9, 9)}, c.stated)), "a.tif");
    ASSERT_TRUE(source.has_value());
    const auto page = (*source)->Load(1);
    ASSERT_TRUE(page.has_value());
    EXPECT_DOUBLE_EQ(page->dpi, c.dpi);
  }
}

TEST(PictureSourceTest, GivesAPngInGreyAndInColour) {
  const SampleFolder folder;
  const auto source = OpenScan(folder.Write("a.png", EncodePng(Red(30, 20))), "a.png");
  ASSERT_TRUE(source.has_value()) << source.error().ToString();
  EXPECT_EQ((*source)->page_count(), 1);
  const auto grey = (*source)->Load(1);
  ASSERT_TRUE(grey.has_value());
  EXPECT_EQ(grey->image.width, 30);
  EXPECT_LT(grey->image.row(10)[10], 128);
  const auto color = (*source)->LoadColor(1, 15);
  ASSERT_TRUE(color.has_value());
  EXPECT_EQ(color->width, 15);
  EXPECT_EQ(color->height, 10);
  EXPECT_EQ(color->pixels[0], 255);
  EXPECT_EQ(color->pixels[1], 0);
}

TEST(PictureSourceTest, RefusesByTheHeaderWhatIsTooLarge) {
  const SampleFolder folder;
  const std::filesystem::path path = folder.Write("a.tif", SampleTiff({NoisePicture(60, 40)}, 200));
  const struct {
    int side;
    std::int64_t pixels;
  } kCases[] = {{59, 1'000'000}, {1000, 2399}};
  for (const auto& c : kCases) {
    RasterLimits limits;
    limits.max_side_px = c.side;
    limits.max_pixels = c.pixels;
    const auto source = OpenScan(path, "a.tif", limits);
    ASSERT_TRUE(source.has_value());
    const std::vector<Error> errors = {(*source)->Load(1).error(), (*source)->LoadColor(1, 10).error()};
    for (const Error& error : errors) {
      EXPECT_EQ(error.code, ErrorCode::kTooLarge);
      EXPECT_EQ(error.source, "a.tif");
      EXPECT_EQ(error.page, 1);
      EXPECT_THAT(error.message, HasSubstr("60 x 40"));
    }
  }
}

TEST(PictureSourceTest, NamesThePageThatIsDamaged) {
  std::string tiff = SampleTiff({NoisePicture(60, 40), NoisePicture(60, 40)}, 200);
  // The second page's ImageWidth (tag 256, the first field of the last directory) becomes 0.
  const std::size_t directory = tiff.size() - 4 - 12 * 12;
  ASSERT_EQ(tiff.substr(directory, 2), std::string("\0\1", 2));
  tiff[directory + 8] = 0;
  const SampleFolder folder;
  const auto source = OpenScan(folder.Write("a.tif", tiff), "a.tif");
  ASSERT_TRUE(source.has_value());
  EXPECT_TRUE((*source)->Load(1).has_value());
  const auto page = (*source)->Load(2);
  ASSERT_FALSE(page.has_value());
  EXPECT_EQ(page.error().code, ErrorCode::kDamaged);
  EXPECT_EQ(page.error().page, 2);
  EXPECT_EQ(page.error().source, "a.tif");
  EXPECT_EQ((*source)->Load(3).error().code, ErrorCode::kMissing);
}

TEST(PictureSourceTest, APictureCutShortIsDamaged) {
  const std::string png = EncodePng(Red(300, 200));
  const SampleFolder folder;
  const auto source = OpenScan(folder.Write("a.png", png.substr(0, png.size() / 2)), "a.png");
  ASSERT_TRUE(source.has_value());
  const auto page = (*source)->Load(1);
  ASSERT_FALSE(page.has_value());
  EXPECT_EQ(page.error().code, ErrorCode::kDamaged);
}

}  // namespace
}  // namespace benchleaf
