#include "benchleaf/pixels/pdf_picture.h"

#include "benchleaf/pixels/image_file.h"

#include <gtest/gtest.h>
#include <leptonica/allheaders.h>

#include <memory>
#include <string>

namespace benchleaf {
namespace {

using Picture = std::unique_ptr<Pix, void (*)(Pix*)>;

Picture Made(int depth) {
  return {pixCreate(40, 30, depth), [](Pix* pix) { pixDestroy(&pix); }};
}

std::string FileOf(Pix* pix, int format) {
  l_uint8* data = nullptr;
  size_t size = 0;
  EXPECT_EQ(pixWriteMem(&data, &size, pix, format), 0);
  std::string bytes(reinterpret_cast<const char*>(data), size);
  lept_free(data);
  return bytes;
}

TEST(PackForPdf, TakesAJpegWhole) {
  const std::string jpeg = FileOf(Made(8).get(), IFF_JFIF_JPEG);
  const auto packed = PackForPdf(jpeg, 1);
  ASSERT_TRUE(packed) << packed.error().ToString();
  EXPECT_EQ(packed->coding, PdfPicture::Coding::kJpeg);
  EXPECT_EQ(packed->bytes, jpeg);
  EXPECT_EQ(packed->width, 40);
  EXPECT_EQ(packed->components, 1);
}

TEST(PackForPdf, TellsTheDepthOfWhatItPacks) {
  struct Case {
    const char* why;
    int depth;
    int format;
    int components;
    int bits;
  };
  for (const Case& c :
       {Case{"black and white rows of a PNG", 1, IFF_PNG, 1, 1}, Case{"grey rows of a PNG", 8, IFF_PNG, 1, 8},
        Case{"colours", 32, IFF_PNG, 3, 8}, Case{"colours of a TIFF", 32, IFF_TIFF_LZW, 3, 8},
        Case{"sixteen bits a sample", 16, IFF_TIFF, 1, 8}}) {
    const auto packed = PackForPdf(FileOf(Made(c.depth).get(), c.format), 1);
    ASSERT_TRUE(packed) << c.why << ": " << packed.error().ToString();
    EXPECT_EQ(packed->coding, PdfPicture::Coding::kPng) << c.why;
    EXPECT_EQ(packed->components, c.components) << c.why;
    EXPECT_EQ(packed->bits, c.bits) << c.why;
    EXPECT_EQ(packed->height, 30) << c.why;
    EXPECT_FALSE(packed->bytes.empty()) << c.why;
  }
}

TEST(PackForPdf, BringsAPaletteToItsColours) {
  const Picture pix = Made(8);
  PixColormap* palette = pixcmapCreate(8);
  pixcmapAddColor(palette, 200, 30, 40);
  pixSetColormap(pix.get(), palette);
  const auto packed = PackForPdf(FileOf(pix.get(), IFF_PNG), 1);
  ASSERT_TRUE(packed) << packed.error().ToString();
  EXPECT_EQ(packed->components, 3);
}

TEST(PackForPdf, CutShortAnywhereIsNoFault) {
  const std::string png = FileOf(Made(8).get(), IFF_PNG);
  for (std::size_t length = 0; length < png.size(); ++length) {
    static_cast<void>(PackForPdf(png.substr(0, length), 1));
  }
  EXPECT_FALSE(PackForPdf("no picture at all, but long enough", 1));
}

}  // namespace
}  // namespace benchleaf
