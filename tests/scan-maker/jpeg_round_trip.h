// Pictures as JPEG, and what they have lost when they were kept so.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_JPEG_ROUND_TRIP_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_JPEG_ROUND_TRIP_H_

#include "benchleaf/core/image.h"

#include <string>

namespace benchleaf::scanmaker {

// The bytes of a JPEG file, quality 1 to 100; `dpi` stands in its head, 0 leaves it out. Throws as JpegRoundTrip does.
std::string EncodeJpeg(const GreyImage& image, int quality, int dpi = 0);

// The picture written as JPEG with that quality (1 to 100) and read again. Throws std::runtime_error when libjpeg
// refuses it (a side over 65,500 px).
GreyImage JpegRoundTrip(const GreyImage& image, int quality);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_JPEG_ROUND_TRIP_H_
