#include "benchleaf/pixels/image_file.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

ColorImage Stripe() {
  ColorImage image;
  image.width = 3;
  image.height = 1;
  image.pixels = {255, 0, 0, 0, 0, 0, 255, 255, 255};
  return image;
}

TEST(ImageFile, PngComesBackAsItWas) {
  const std::string png = EncodePng(Stripe());
  const auto header = ReadPictureHeader(png, 1);
  ASSERT_TRUE(header) << header.error().message;
  EXPECT_EQ(header->width, 3);
  EXPECT_EQ(header->height, 1);
  EXPECT_EQ(CountPictures(png), 1);
  EXPECT_EQ(DecodeColor(png, 1)->pixels, Stripe().pixels);
  const auto grey = DecodeGrey(png, 1);
  ASSERT_TRUE(grey);
  EXPECT_EQ(grey->row(0)[1], 0);
  EXPECT_EQ(grey->row(0)[2], 255);
}

TEST(ImageFile, NamesWhatIsWrong) {
  const std::string png = EncodePng(Stripe());
  struct Case {
    std::string bytes;
    ErrorCode code;
    const char* why;
  };
  const Case cases[] = {
      {"", ErrorCode::kDamaged, "no bytes at all"},
      {"hello", ErrorCode::kDamaged, "fewer bytes than any header has"},
      {"this is a text file, not a scan", ErrorCode::kDamaged, "text"},
      {"GIF89a, which no scanner writes", ErrorCode::kUnsupported, "a picture of another kind"},
      {png.substr(0, 20), ErrorCode::kDamaged, "cut in the header"},
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.why);
    const auto header = ReadPictureHeader(c.bytes, 1);
    ASSERT_FALSE(header);
    EXPECT_EQ(header.error().code, c.code) << header.error().message;
  }
}

TEST(ImageFile, APictureCutInItsDataIsDamaged) {
  ColorImage large;
  large.width = large.height = 200;
  large.pixels.resize(200 * 200 * 3);
  for (std::size_t i = 0; i < large.pixels.size(); ++i) {
    large.pixels[i] = static_cast<std::uint8_t>(i * 7919 % 251);
  }
  const std::string png = EncodePng(large);
  const auto grey = DecodeGrey(std::string_view(png).substr(0, png.size() / 2), 1);
  ASSERT_FALSE(grey);
  EXPECT_EQ(grey.error().code, ErrorCode::kDamaged);
}

TEST(ImageFile, FitsLargePicturesAndLeavesSmallOnes) {
  ColorImage wide;
  wide.width = 400;
  wide.height = 100;
  wide.pixels.assign(400 * 100 * 3, 120);
  const ColorImage fitted = ScaledToFit(wide, 100);
  EXPECT_EQ(fitted.width, 100);
  EXPECT_EQ(fitted.height, 25);
  EXPECT_EQ(fitted.pixels[0], 120);
  EXPECT_EQ(ScaledToFit(Stripe(), 100).width, 3);
}

}  // namespace
}  // namespace benchleaf
