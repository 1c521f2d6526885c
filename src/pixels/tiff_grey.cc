#include "pixels/tiff_grey.h"

#include "pixels/tiff_in_memory.h"

#include <algorithm>
#include <cstdint>

namespace benchleaf {

std::optional<GreyImage> ReadGreyTiff(std::string_view tiff, int page) {
  const TiffInMemory file(tiff, page);
  TIFF* const open = file.get();
  if (open == nullptr || !file.InPlainStrips()) {
    return std::nullopt;
  }
  const auto levels = Tag<std::uint16_t>(open, TIFFTAG_PHOTOMETRIC);
  if (Tag<std::uint16_t>(open, TIFFTAG_BITSPERSAMPLE) != 8 || Tag<std::uint16_t>(open, TIFFTAG_SAMPLESPERPIXEL) != 1 ||
      (levels != PHOTOMETRIC_MINISBLACK && levels != PHOTOMETRIC_MINISWHITE)) {
    return std::nullopt;
  }
  constexpr std::int64_t kMostPixels = std::int64_t{1} << 30;
  const int width = Tag<int>(open, TIFFTAG_IMAGEWIDTH);
  const int height = Tag<int>(open, TIFFTAG_IMAGELENGTH);
  if (std::int64_t{width} * height > kMostPixels || TIFFScanlineSize64(open) != static_cast<std::uint64_t>(width)) {
    return std::nullopt;
  }
  GreyImage image(width, height);
  for (int y = 0; y < image.height; ++y) {
    std::uint8_t* const row = image.row(y);
    if (TIFFReadScanline(open, row, static_cast<std::uint32_t>(y), 0) != 1) {
      return std::nullopt;
    }
    if (levels == PHOTOMETRIC_MINISWHITE) {
      std::transform(row, row + image.width, row, [](std::uint8_t level) { return 255 - level; });
    }
  }
  return image;
}

}  // namespace benchleaf
