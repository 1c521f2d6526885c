// Files of pictures to Leptonica's pictures. Private to pixels/.

#ifndef BENCHLEAF_SRC_PIXELS_DECODE_H_
#define BENCHLEAF_SRC_PIXELS_DECODE_H_

#include "pixels/pix.h"

#include "benchleaf/core/result.h"

#include <string_view>

namespace benchleaf {

// IFF_TIFF, IFF_PNG or IFF_JFIF_JPEG, by the first bytes; only the kinds that a scanner gives are taken.
Result<l_int32> FormatOf(std::string_view bytes);

// The picture as the file has it; `page` counts from 1.
Result<PixHandle> Decode(std::string_view bytes, int page);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_PIXELS_DECODE_H_
