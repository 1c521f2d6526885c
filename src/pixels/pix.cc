#include "pixels/pix.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf {
namespace {

const l_uint32* Line(Pix* pix, int y) { return pixGetData(pix) + static_cast<std::ptrdiff_t>(pixGetWpl(pix)) * y; }

l_uint32* MutableLine(Pix* pix, int y) { return pixGetData(pix) + static_cast<std::ptrdiff_t>(pixGetWpl(pix)) * y; }

}  // namespace

void SilenceLeptonica() { setMsgSeverity(L_SEVERITY_NONE); }

PixHandle ToPix(const GreyImage& image) {
  SilenceLeptonica();
  PixHandle pix(pixCreateNoInit(image.width, image.height, 8));
  if (!pix) {
    return pix;
  }
  for (int y = 0; y < image.height; ++y) {
    l_uint32* line = MutableLine(pix.get(), y);
    const std::uint8_t* from = image.row(y);
    for (int x = 0; x < image.width; ++x) {
      SET_DATA_BYTE(line, x, from[x]);
    }
  }
  return pix;
}

PixHandle ToPix(const InkImage& image) {
  SilenceLeptonica();
  PixHandle pix(pixCreateNoInit(image.width, image.height, 1));
  if (!pix) {
    return pix;
  }
  // Leptonica's rows are InkImage's rows.
  for (int y = 0; y < image.height; ++y) {
    std::copy_n(image.row_words(y), image.words_per_row(), MutableLine(pix.get(), y));
  }
  return pix;
}

PixHandle ToPix(const ColorImage& image) {
  SilenceLeptonica();
  PixHandle pix(pixCreateNoInit(image.width, image.height, 32));
  if (!pix) {
    return pix;
  }
  const std::uint8_t* from = image.pixels.data();
  for (int y = 0; y < image.height; ++y) {
    l_uint32* line = MutableLine(pix.get(), y);
    for (int x = 0; x < image.width; ++x, from += 3) {
      composeRGBPixel(from[0], from[1], from[2], line + x);
    }
  }
  return pix;
}

GreyImage ToGrey(Pix* pix) {
  GreyImage image(pixGetWidth(pix), pixGetHeight(pix));
  for (int y = 0; y < image.height; ++y) {
    const l_uint32* line = Line(pix, y);
    std::uint8_t* to = image.row(y);
    for (int x = 0; x < image.width; ++x) {
      to[x] = static_cast<std::uint8_t>(GET_DATA_BYTE(line, x));
    }
  }
  return image;
}

InkImage ToInk(Pix* pix) {
  InkImage image(pixGetWidth(pix), pixGetHeight(pix));
  pixSetPadBits(pix, 0);
  for (int y = 0; y < image.height; ++y) {
    std::copy_n(Line(pix, y), image.words_per_row(), image.row_words(y));
  }
  return image;
}

ColorImage ToColor(Pix* pix) {
  ColorImage image;
  image.width = pixGetWidth(pix);
  image.height = pixGetHeight(pix);
  image.pixels.resize(static_cast<std::size_t>(image.width) * static_cast<std::size_t>(image.height) * 3);
  std::uint8_t* to = image.pixels.data();
  for (int y = 0; y < image.height; ++y) {
    const l_uint32* line = Line(pix, y);
    for (int x = 0; x < image.width; ++x, to += 3) {
      l_int32 red = 0;
      l_int32 green = 0;
      l_int32 blue = 0;
      extractRGBValues(line[x], &red, &green, &blue);
      to[0] = static_cast<std::uint8_t>(red);
      to[1] = static_cast<std::uint8_t>(green);
      to[2] = static_cast<std::uint8_t>(blue);
    }
  }
  return image;
}

}  // namespace benchleaf
