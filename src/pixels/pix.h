// The one owner of Leptonica's pictures, and the conversions between them and plain values. Private to pixels/.

#ifndef BENCHLEAF_SRC_PIXELS_PIX_H_
#define BENCHLEAF_SRC_PIXELS_PIX_H_

#include "benchleaf/core/image.h"

#include <leptonica/allheaders.h>

#include <memory>

namespace benchleaf {

struct PixDeleter {
  void operator()(Pix* pix) const { pixDestroy(&pix); }
};

// Owns one handle; empty when an operation failed, which Leptonica tells by a null picture.
using PixHandle = std::unique_ptr<Pix, PixDeleter>;

// Keeps Leptonica from writing to stderr: failures are told by what its functions return.
void SilenceLeptonica();

PixHandle ToPix(const GreyImage& image);
PixHandle ToPix(const InkImage& image);
PixHandle ToPix(const ColorImage& image);

// REQUIRES: 8 bits a pixel without a palette.
GreyImage ToGrey(Pix* pix);
// REQUIRES: 1 bit a pixel.
InkImage ToInk(Pix* pix);
// REQUIRES: 32 bits a pixel.
ColorImage ToColor(Pix* pix);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_PIXELS_PIX_H_
