#include "benchleaf/pixels/operations.h"

#include "pixels/pix.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace benchleaf {

GreyImage Scaled(const GreyImage& image, double factor) {
  const PixHandle pix = ToPix(image);
  const auto f = static_cast<float>(factor);
  PixHandle scaled(pix ? pixScaleGeneral(pix.get(), f, f, 0.0F, 0) : nullptr);
  return scaled ? ToGrey(scaled.get()) : image;
}

GreyImage Leveled(const GreyImage& image, double degrees) {
  const PixHandle pix = ToPix(image);
  const auto radians = static_cast<float>(degrees * std::numbers::pi / 180);
  const PixHandle turned(pix ? pixRotateAMGray(pix.get(), radians, 255) : nullptr);
  return turned ? ToGrey(turned.get()) : image;
}

GreyImage Blurred(const GreyImage& image, int radius) {
  if (radius < 1 || image.width <= 2 * radius || image.height <= 2 * radius) {
    return image;
  }
  const PixHandle pix = ToPix(image);
  const PixHandle once(pix ? pixBlockconv(pix.get(), radius, radius) : nullptr);
  return once ? ToGrey(once.get()) : image;
}

GreyImage WithEvenGround(const GreyImage& image, int ground_px) {
  // The ground is smooth, so a quarter of the page's size tells it as well as the whole does.
  constexpr int kShrink = 4;
  const PixHandle pix = ToPix(image);
  if (!pix || image.width < 16 * kShrink || image.height < 16 * kShrink) {
    return image;
  }
  const PixHandle small(pixScaleAreaMap(pix.get(), 1.0F / kShrink, 1.0F / kShrink));
  const int window = std::max(3, ground_px / kShrink) | 1;
  const PixHandle calm(small ? pixMedianFilter(small.get(), 3, 3) : nullptr);
  const PixHandle filled(calm ? pixCloseGray(calm.get(), window, window) : nullptr);
  const PixHandle ground(filled ? pixBlockconv(filled.get(), 8, 8) : nullptr);
  if (!ground) {
    return image;
  }
  const GreyImage level = ToGrey(ground.get());
  GreyImage even = image;
  for (int y = 0; y < even.height; ++y) {
    const std::uint8_t* ground_row = level.row(std::min(y / kShrink, level.height - 1));
    std::uint8_t* row = even.row(y);
    for (int x = 0; x < even.width; ++x) {
      const int paper = std::max<int>(ground_row[std::min(x / kShrink, level.width - 1)], 1);
      row[x] = static_cast<std::uint8_t>(std::min(255, row[x] * 255 / paper));
    }
  }
  return even;
}

InkImage Binarized(const GreyImage& image, int half_window, double k) {
  InkImage none(image.width, image.height);
  if (image.width < 2 * half_window + 3 || image.height < 2 * half_window + 3) {
    return none;
  }
  const PixHandle pix = ToPix(image);
  // Tiles keep the sums of squares of a large page within what one tile needs.
  constexpr int kTilePx = 2000;
  const int tiles_x = std::max(1, image.width / kTilePx);
  const int tiles_y = std::max(1, image.height / kTilePx);
  Pix* ink = nullptr;
  if (pix) {
    pixSauvolaBinarizeTiled(pix.get(), half_window, static_cast<float>(k), tiles_x, tiles_y, nullptr, &ink);
  }
  const PixHandle owned(ink);
  return owned ? ToInk(owned.get()) : none;
}

InkImage Opened(const InkImage& image, int width, int height) {
  const PixHandle pix = ToPix(image);
  const PixHandle opened(pix ? pixOpenBrick(nullptr, pix.get(), width, height) : nullptr);
  return opened ? ToInk(opened.get()) : InkImage(image.width, image.height);
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
