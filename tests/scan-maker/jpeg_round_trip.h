// What a picture has lost when it was kept as JPEG.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_JPEG_ROUND_TRIP_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_JPEG_ROUND_TRIP_H_

#include "benchleaf/core/image.h"

namespace benchleaf::scanmaker {

// The picture written as JPEG with that quality (1 to 100) and read again. Throws std::runtime_error when libjpeg
// refuses it (a side over 65,500 px).
GreyImage JpegRoundTrip(const GreyImage& image, int quality);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_JPEG_ROUND_TRIP_H_
