// A picture of a scan in the form in which a PDF holds it.

#ifndef BENCHLEAF_PIXELS_PDF_PICTURE_H_
#define BENCHLEAF_PIXELS_PDF_PICTURE_H_

#include "benchleaf/core/result.h"

#include <string>
#include <string_view>

namespace benchleaf {

struct PdfPicture {
  enum class Coding {
    kJpeg,    // a JPEG file
    kGroup4,  // ITU-T T.6
    kPng,     // deflated rows with PNG's predictors, as in a PNG file's IDAT chunks
  };
  Coding coding = Coding::kPng;
  int width = 0;          // px
  int height = 0;         // px
  int components = 1;     // 1 grey, 3 RGB, 4 CMYK
  int bits = 8;           // per component
  bool inverted = false;  // CMYK as some programs write it: 255 is no ink; of kGroup4: its black is to be shown white
  std::string bytes;
};

// One picture of a TIFF, PNG or JPEG file; `page` counts from 1. A JPEG file's bytes are taken as they are, and so is,
// where a PDF can show it, what the picture is coded in: a PNG file's rows, a TIFF's single strip of T.6, its strips of
// JPEG. Anything else is decoded and packed again without loss, black and white in T.6 where that is shorter.
// Fails with kDamaged and kUnsupported.
// REQUIRES: the header was read and its size found bearable.
Result<PdfPicture> PackForPdf(std::string_view bytes, int page);

}  // namespace benchleaf

#endif  // BENCHLEAF_PIXELS_PDF_PICTURE_H_
