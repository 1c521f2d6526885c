#include "benchleaf/core/image.h"

#include <algorithm>

namespace benchleaf {

GreyImage Crop(const GreyImage& image, const Box& box) {
  const Box part = Intersection(box, {0, 0, image.width, image.height});
  GreyImage crop(part.width, part.height);
  for (int y = 0; y < part.height; ++y) {
    const std::uint8_t* from = image.row(part.y + y) + part.x;
    std::copy(from, from + part.width, crop.row(y));
  }
  return crop;
}

GreyImage Turned(const GreyImage& image, int degrees) {
  if (degrees == 0) {
    return image;
  }
  if (degrees == 180) {
    GreyImage turned = image;
    std::reverse(turned.pixels.begin(), turned.pixels.end());
    return turned;
  }
  GreyImage turned(image.height, image.width);
  for (int y = 0; y < image.height; ++y) {
    const std::uint8_t* from = image.row(y);
    for (int x = 0; x < image.width; ++x) {
      // Clockwise, the top row becomes the right column; counter-clockwise, the left one.
      if (degrees == 90) {
        turned.row(x)[image.height - 1 - y] = from[x];
      } else {
        turned.row(image.width - 1 - x)[y] = from[x];
      }
    }
  }
  return turned;
}

}  // namespace benchleaf
