#include "benchleaf/pixels/operations.h"

#include "pixels/pix.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace benchleaf {

GreyImage Scaled(GreyImage image, double factor) {
  constexpr double kLinearFrom = 0.7;
  if (factor < kLinearFrom) {
    return Shrunk(image, factor);
  }
  PixHandle pix = ToPix(image);
  const auto f = static_cast<float>(factor);
  const PixHandle scaled(pix ? pixScaleGrayLI(pix.get(), f, f) : nullptr);
  if (!scaled) {
    return image;
  }
  // A fold-out must not be held four times.
  pix.reset();
  image = {};
  return ToGrey(scaled.get());
}

InkImage Thresholded(const GreyImage& image, std::uint8_t ink_below) {
  InkImage ink(image.width, image.height);
  std::vector<std::uint8_t> is_ink(static_cast<std::size_t>(image.width));
  for (int y = 0; y < image.height; ++y) {
    const std::uint8_t* row = image.row(y);
    std::transform(row, row + image.width, is_ink.begin(),
                   [ink_below](std::uint8_t grey) { return static_cast<std::uint8_t>(grey < ink_below ? 1 : 0); });
    ink.row(y).Take(is_ink.data(), image.width);
  }
  return ink;
}

InkImage OnItsSide(const InkImage& image) {
  const PixHandle pix = ToPix(image);
  const PixHandle turned(pix ? pixRotate90(pix.get(), 1) : nullptr);
  return turned ? ToInk(turned.get()) : InkImage(image.height, image.width);
}

InkImage Opened(const InkImage& image, int width, int height) {
  const PixHandle pix = ToPix(image);
  const PixHandle opened(pix ? pixOpenBrick(nullptr, pix.get(), width, height) : nullptr);
  return opened ? ToInk(opened.get()) : InkImage(image.width, image.height);
}

InkImage Dilated(const InkImage& image, int width, int height) {
  const PixHandle pix = ToPix(image);
  const PixHandle dilated(pix ? pixDilateBrick(nullptr, pix.get(), width, height) : nullptr);
  return dilated ? ToInk(dilated.get()) : image;
}

InkImage Closed(const InkImage& image, int width, int height) {
  const PixHandle pix = ToPix(image);
  const PixHandle closed(pix ? pixCloseSafeBrick(nullptr, pix.get(), width, height) : nullptr);
  return closed ? ToInk(closed.get()) : image;
}

Skew FindSkew(const InkImage& image, double range_degrees) {
  const PixHandle pix = ToPix(image);
  if (!pix || image.width < 200 || image.height < 200) {
    return {};
  }
  // Coarse at a quarter of the size, then fine at half of it, to a hundredth of a degree.
  l_float32 degrees = 0;
  l_float32 confidence = 0;
  const l_int32 failed =
      pixFindSkewSweepAndSearch(pix.get(), &degrees, &confidence, 4, 2, static_cast<float>(range_degrees), 0.5F, 0.01F);
  return failed != 0 ? Skew{} : Skew{degrees, confidence};
}

}  // namespace benchleaf
