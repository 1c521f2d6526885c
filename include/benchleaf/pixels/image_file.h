// Picture files to values and back. Formats are told by content, never by name.

#ifndef BENCHLEAF_PIXELS_IMAGE_FILE_H_
#define BENCHLEAF_PIXELS_IMAGE_FILE_H_

#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"

#include <string>
#include <string_view>

namespace benchleaf {

struct PictureHeader {
  int width = 0;   // px
  int height = 0;  // px
  double dpi = 0;  // 0 when the file does not say
};

// Width, height and resolution of one picture, without decoding it. `bytes` is a whole TIFF, PNG or JPEG file; `page`
// counts from 1. Fails with kDamaged, and with kUnsupported for any other format.
Result<PictureHeader> ReadPictureHeader(std::string_view bytes, int page);

// The pictures in a TIFF; 1 for PNG and JPEG. Fails as ReadPictureHeader does.
Result<int> CountPictures(std::string_view bytes);

// The picture in grey. Palettes, 1-bit and 16-bit depths are brought to 8-bit grey; transparent parts become white.
// REQUIRES: the header was read and its size found bearable.
Result<GreyImage> DecodeGrey(std::string_view bytes, int page);

// The picture in colour; likewise.
Result<ColorImage> DecodeColor(std::string_view bytes, int page);

// A PNG file's bytes.
std::string EncodePng(const ColorImage& image);

// A JPEG file's bytes, progressive, `quality` from 1 to 100; grey when the picture holds no colour to speak of, which
// takes less room. Empty when the picture has no pixels.
std::string EncodeJpeg(const ColorImage& image, int quality);

// The picture made smaller so that its longer side is at most `max_side_px`; a smaller picture stays as it is.
ColorImage ScaledToFit(const ColorImage& image, int max_side_px);

}  // namespace benchleaf

#endif  // BENCHLEAF_PIXELS_IMAGE_FILE_H_
