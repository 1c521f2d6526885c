#include "pixels/tiff_strips.h"

#include "pixels/jpeg_strips.h"
#include "pixels/made_tiff.h"

#include "benchleaf/pixels/image_file.h"
#include "benchleaf/pixels/pdf_picture.h"

#include <gtest/gtest.h>
#include <tiffio.h>

#include <cstdlib>
#include <string>

namespace benchleaf {
namespace {

using Coding = PdfPicture::Coding;

constexpr MadeTiffPage kFax{.width = 203, .height = 150, .photometric = PHOTOMETRIC_MINISWHITE};
constexpr MadeTiffPage kGrey{
    .width = 203, .height = 150, .bits = 8, .compression = COMPRESSION_JPEG, .photometric = PHOTOMETRIC_MINISBLACK};
constexpr MadeTiffPage kRgb{.width = 203,
                            .height = 150,
                            .samples = 3,
                            .bits = 8,
                            .compression = COMPRESSION_JPEG,
                            .photometric = PHOTOMETRIC_RGB};
constexpr MadeTiffPage kYcbcr{.width = 203,
                              .height = 150,
                              .samples = 3,
                              .bits = 8,
                              .compression = COMPRESSION_JPEG,
                              .photometric = PHOTOMETRIC_YCBCR};

TEST(TiffStrips, AreTakenAsTheyAreWhereAPdfCanShowThem) {
  struct Case {
    const char* why;
    MadeTiffPage page;
    Coding coding;
  };
  const Case cases[] = {
      {"a fax in one strip", kFax, Coding::kGroup4},
      {"a fax whose black is white", With(kFax, [](auto& p) { p.photometric = PHOTOMETRIC_MINISBLACK; }),
       Coding::kGroup4},
      {"a fax with the low bit first", With(kFax, [](auto& p) { p.fill_order = FILLORDER_LSB2MSB; }), Coding::kGroup4},
      {"a fax in strips: joined, in the same code", With(kFax, [](auto& p) { p.rows = 16; }), Coding::kGroup4},
      {"a fax on its side: turned, and packed in what takes less",
       With(kFax, [](auto& p) { p.orientation = ORIENTATION_RIGHTTOP; }), Coding::kPng},
      {"a fax of the older code", With(kFax, [](auto& p) { p.compression = COMPRESSION_CCITTFAX3; }), Coding::kGroup4},
      {"black and white without a code", With(kFax, [](auto& p) { p.compression = COMPRESSION_NONE; }),
       Coding::kGroup4},
      {"grey JPEG", kGrey, Coding::kJpeg},
      {"grey JPEG in strips", With(kGrey, [](auto& p) { p.rows = 16; }), Coding::kJpeg},
      {"grey JPEG in more strips than there are restart markers", With(kGrey, [](auto& p) { p.rows = 8; }),
       Coding::kJpeg},
      {"JPEG in RGB", kRgb, Coding::kJpeg},
      {"JPEG in RGB and strips", With(kRgb, [](auto& p) { p.rows = 32; }), Coding::kJpeg},
      {"JPEG in YCbCr", kYcbcr, Coding::kJpeg},
      {"JPEG in YCbCr and strips", With(kYcbcr, [](auto& p) { p.rows = 16; }), Coding::kJpeg},
      {"JPEG on its side", With(kGrey, [](auto& p) { p.orientation = ORIENTATION_RIGHTTOP; }), Coding::kPng},
      {"colours in LZW", With(kRgb, [](auto& p) { p.compression = COMPRESSION_LZW; }), Coding::kPng},
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.why);
    const std::string tiff = MadeTiff({kFax, c.page});
    const auto packed = PackForPdf(tiff, 2);
    ASSERT_TRUE(packed) << packed.error().ToString();
    EXPECT_EQ(packed->coding, c.coding);
    EXPECT_EQ(packed->components, c.page.samples);
    const bool turned = c.page.orientation == ORIENTATION_RIGHTTOP;
    EXPECT_EQ(packed->width, turned ? 150 : 203);
    EXPECT_EQ(packed->height, turned ? 203 : 150);
    if (c.coding != Coding::kJpeg) continue;
    // The same pixels as libtiff gives, and no more bytes.
    const auto joined = DecodeColor(packed->bytes, 1);
    const auto page = DecodeColor(tiff, 2);
    ASSERT_TRUE(joined && page);
    double apart = 0;
    for (std::size_t i = 0; i < page->pixels.size(); ++i) apart += std::abs(joined->pixels[i] - page->pixels[i]);
    // Decoders enlarge the smaller planes of colour in different ways.
    EXPECT_LE(apart / static_cast<double>(page->pixels.size()), c.page.photometric == PHOTOMETRIC_YCBCR ? 4 : 0);
    EXPECT_LT(packed->bytes.size(), MadeTiff({c.page}).size() + 30);
  }
}

TEST(TiffStrips, OfASingleOneKeepEveryByte) {
  const std::string fax = MadeTiff({kFax});
  const auto strips = ReadTiffStrips(fax, 1);
  ASSERT_TRUE(strips);
  const auto packed = PackForPdf(fax, 1);
  ASSERT_TRUE(packed);
  EXPECT_EQ(packed->bytes, strips->strips.front());
  EXPECT_NE(fax.find(packed->bytes), std::string::npos);
  // The low bit first is the same code with every byte turned round.
  const auto turned = PackForPdf(MadeTiff({With(kFax, [](auto& p) { p.fill_order = FILLORDER_LSB2MSB; })}), 1);
  ASSERT_TRUE(turned);
  EXPECT_EQ(turned->bytes, packed->bytes);

  const std::string jpeg = MadeTiff({kGrey});
  const auto page = PackForPdf(jpeg, 1);
  ASSERT_TRUE(page);
  // All behind the tables, which the TIFF keeps elsewhere.
  const std::string scan = page->bytes.substr(page->bytes.find("\xFF\xDA"));
  EXPECT_NE(jpeg.find(scan), std::string::npos);
}

TEST(TiffStrips, DamagedAnywhereAreNoFault) {
  for (const MadeTiffPage& made : {With(kGrey, [](auto& p) { p.rows = 16; }), kFax}) {
    const std::string tiff = MadeTiff({made});
    for (std::size_t length = 0; length < tiff.size(); length += 3) {
      static_cast<void>(ReadTiffStrips(std::string_view(tiff).substr(0, length), 1));
    }
    for (std::size_t at = 0; at < tiff.size(); ++at) {
      for (const char byte : {'\0', '\x01', '\xFF'}) {
        std::string spoilt = tiff;
        spoilt[at] = byte;
        const auto strips = ReadTiffStrips(spoilt, 1);
        if (!strips) continue;
        std::size_t size = 0;
        for (const std::string& strip : strips->strips) size += strip.size();
        EXPECT_LE(size, tiff.size()) << at;
        if (strips->coding == TiffStrips::Coding::kJpeg) static_cast<void>(JoinedJpeg(*strips));
      }
    }
  }
  EXPECT_FALSE(ReadTiffStrips("no TIFF at all", 1));
  EXPECT_FALSE(ReadTiffStrips(MadeTiff({kFax}), 2)) << "no such page";
}

}  // namespace
}  // namespace benchleaf
