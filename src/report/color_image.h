// Turning and enlarging colour pictures.

#ifndef BENCHLEAF_SRC_REPORT_COLOR_IMAGE_H_
#define BENCHLEAF_SRC_REPORT_COLOR_IMAGE_H_

#include "benchleaf/core/image.h"
#include "benchleaf/report/picture.h"

#include <cstddef>
#include <cstdint>

namespace benchleaf {

constexpr std::size_t kBytesPerPixel = 3;

ColorImage BlankColorImage(int width, int height, std::uint8_t fill);

// The first of the three bytes of a pixel.
// REQUIRES: the pixel lies in the picture.
inline std::uint8_t* Pixel(ColorImage& image, int x, int y) {
  return image.pixels.data() +
         (static_cast<std::size_t>(y) * static_cast<std::size_t>(image.width) + static_cast<std::size_t>(x)) *
             kBytesPerPixel;
}
inline const std::uint8_t* Pixel(const ColorImage& image, int x, int y) {
  return image.pixels.data() +
         (static_cast<std::size_t>(y) * static_cast<std::size_t>(image.width) + static_cast<std::size_t>(x)) *
             kBytesPerPixel;
}

// Brings the pixel towards the colour: 0 leaves it, 1 makes it the colour.
void Blend(std::uint8_t* pixel, const Rgb& color, double share);

// Turned clockwise by 0, 90, 180 or 270 degrees.
ColorImage Turned(const ColorImage& image, int degrees);

// The same turn for a box on a page.
FractionBox Turned(const FractionBox& box, int degrees);

// `factor` times as large, linear between pixels.
// REQUIRES: factor >= 1 and the picture is not empty.
ColorImage Enlarged(const ColorImage& image, int factor);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_REPORT_COLOR_IMAGE_H_
