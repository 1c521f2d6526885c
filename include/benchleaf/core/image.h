// Pictures as plain values, so that stages can be tested and joined without any imaging library.

#ifndef BENCHLEAF_CORE_IMAGE_H_
#define BENCHLEAF_CORE_IMAGE_H_

#include "benchleaf/core/geometry.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace benchleaf {

// A grey picture: 8 bits a pixel, rows from the top without padding, 0 black, 255 white.
struct GreyImage {
  int width = 0;   // px
  int height = 0;  // px
  std::vector<std::uint8_t> pixels;

  GreyImage() = default;
  GreyImage(int w, int h, std::uint8_t fill = 255)
      : width(w), height(h), pixels(static_cast<std::size_t>(w) * static_cast<std::size_t>(h), fill) {}

  bool empty() const { return pixels.empty(); }
  std::uint8_t* row(int y) { return pixels.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width); }
  const std::uint8_t* row(int y) const {
    return pixels.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width);
  }

  friend bool operator==(const GreyImage&, const GreyImage&) = default;
};

// A colour picture: 3 bytes a pixel (red, green, blue), rows from the top without padding.
struct ColorImage {
  int width = 0;   // px
  int height = 0;  // px
  std::vector<std::uint8_t> pixels;
};

// A 1-bit picture, a byte a pixel: 1 is ink, 0 is ground. Rows from the top without padding.
struct InkImage {
  int width = 0;   // px
  int height = 0;  // px
  std::vector<std::uint8_t> pixels;

  InkImage() = default;
  InkImage(int w, int h) : width(w), height(h), pixels(static_cast<std::size_t>(w) * static_cast<std::size_t>(h), 0) {}

  bool empty() const { return pixels.empty(); }
  std::uint8_t* row(int y) { return pixels.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width); }
  const std::uint8_t* row(int y) const {
    return pixels.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width);
  }
};

// The part of the picture under `box`, which is cut to the picture first.
GreyImage Crop(const GreyImage& image, const Box& box);

// The picture turned clockwise by 0, 90, 180 or 270 degrees.
// REQUIRES: degrees is one of these.
GreyImage Turned(const GreyImage& image, int degrees);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_IMAGE_H_
