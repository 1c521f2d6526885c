// The JPEG strips of a TIFF's page as one JPEG file, without decoding any. Private to pixels/.

#ifndef BENCHLEAF_SRC_PIXELS_JPEG_STRIPS_H_
#define BENCHLEAF_SRC_PIXELS_JPEG_STRIPS_H_

#include "pixels/tiff_strips.h"

#include <optional>
#include <string>

namespace benchleaf {

// The strips' coded data stay as they are. Several follow each other as the restart intervals of one scan (ITU-T T.81,
// E.1.4, E.2.4), which begin anew as strips do. The file states how its colours are coded. Nothing where the strips
// have other measures than the page, differ in anything but their height, or hold what cannot be joined.
// REQUIRES: `page` is coded in JPEG.
std::optional<std::string> JoinedJpeg(const TiffStrips& page);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_PIXELS_JPEG_STRIPS_H_
