#include "pixels/tiff_grey.h"

#include "pixels/made_tiff.h"

#include "benchleaf/pixels/image_file.h"

#include <gtest/gtest.h>
#include <tiffio.h>

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>

namespace benchleaf {
namespace {

constexpr MadeTiffPage kLzw{
    .width = 203, .height = 150, .bits = 8, .compression = COMPRESSION_LZW, .photometric = PHOTOMETRIC_MINISBLACK};

TEST(TiffGrey, IsTakenRowByRow) {
  struct Case {
    const char* why;
    MadeTiffPage page;
  };
  const Case cases[] = {
      {"one strip", kLzw},
      {"many strips", With(kLzw, [](auto& p) { p.rows = 7; })},
      {"no code", With(kLzw, [](auto& p) { p.compression = COMPRESSION_NONE; })},
      {"deflated", With(kLzw, [](auto& p) { p.compression = COMPRESSION_ADOBE_DEFLATE; })},
      {"packed", With(kLzw, [](auto& p) { p.compression = COMPRESSION_PACKBITS; })},
  };
  for (const Case& c : cases) {
    const auto grey = ReadGreyTiff(MadeTiff({kLzw, c.page}), 2);
    ASSERT_TRUE(grey) << c.why;
    ASSERT_EQ(grey->width, c.page.width) << c.why;
    ASSERT_EQ(grey->height, c.page.height) << c.why;
    for (int y = 0; y < grey->height; ++y) {
      ASSERT_TRUE(std::equal(grey->row(y), grey->row(y) + grey->width, RowOfMadeTiff(c.page, y).begin())) << c.why << y;
    }
  }
}

TEST(TiffGrey, IsTurnedRoundWhereBlackIsTheHighestLevel) {
  const MadeTiffPage page = With(kLzw, [](auto& p) { p.photometric = PHOTOMETRIC_MINISWHITE; });
  const auto grey = ReadGreyTiff(MadeTiff({page}), 1);
  ASSERT_TRUE(grey);
  EXPECT_EQ(grey->row(75)[100], 255 - RowOfMadeTiff(page, 75)[100]);
}

TEST(TiffGrey, OfOtherKindsIsLeftToTheGeneralDecoder) {
  const MadeTiffPage others[] = {
      MadeTiffPage{.width = 203, .height = 150},
      With(kLzw, [](auto& p) { p.orientation = ORIENTATION_RIGHTTOP; }),
      With(kLzw,
           [](auto& p) {
             p.samples = 3;
             p.photometric = PHOTOMETRIC_RGB;
           }),
  };
  for (const MadeTiffPage& page : others) {
    const std::string tiff = MadeTiff({page});
    EXPECT_FALSE(ReadGreyTiff(tiff, 1));
    EXPECT_TRUE(DecodeGrey(tiff, 1));
  }
}

TEST(TiffGrey, DamagedAnywhereIsNoFault) {
  const std::string tiff = MadeTiff({With(kLzw, [](auto& p) { p.rows = 16; })});
  for (std::size_t length = 0; length < tiff.size(); length += 3) {
    static_cast<void>(ReadGreyTiff(std::string_view(tiff).substr(0, length), 1));
  }
  for (std::size_t at = 0; at < tiff.size(); ++at) {
    for (const char byte : {'\0', '\x01', '\xFF'}) {
      std::string spoilt = tiff;
      spoilt[at] = byte;
      static_cast<void>(ReadGreyTiff(spoilt, 1));
    }
  }
  EXPECT_FALSE(ReadGreyTiff("no TIFF at all", 1));
  EXPECT_FALSE(ReadGreyTiff(tiff, 2)) << "no such page";
}

}  // namespace
}  // namespace benchleaf
