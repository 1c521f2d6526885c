#include "benchleaf/core/image.h"

#include <algorithm>
#include <bit>
#include <functional>
#include <numeric>

namespace benchleaf {

int InkImage::ConstRow::Next(int x, std::uint32_t skipped) const {
  if (x >= width_) {
    return width_;
  }
  int word = x >> 5;
  // Pixels that are not skipped, from x on.
  std::uint32_t wanted = (words_[word] ^ skipped) & (~0U >> (x & 31));
  while (wanted == 0) {
    if (++word == WordsFor(width_)) {
      return width_;
    }
    wanted = words_[word] ^ skipped;
  }
  return std::min(width_, word * 32 + std::countl_zero(wanted));
}

void InkImage::Row::Ink(int begin, int end) const {
  if (begin >= end) {
    return;
  }
  const int first = begin >> 5;
  const int last = (end - 1) >> 5;
  const std::uint32_t from_begin = ~0U >> (begin & 31);
  const std::uint32_t to_end = ~0U << (31 - ((end - 1) & 31));
  if (first == last) {
    words_[first] |= from_begin & to_end;
    return;
  }
  words_[first] |= from_begin;
  std::fill(words_ + first + 1, words_ + last, ~0U);
  words_[last] |= to_end;
}

void InkImage::Row::Take(const std::uint8_t* is_ink, int width) const {
  for (int begin = 0; begin < width; begin += 32) {
    const int count = std::min(32, width - begin);
    std::uint32_t word = 0;
    for (int i = 0; i < count; ++i) {
      word = (word << 1) | is_ink[begin + i];
    }
    words_[begin >> 5] = word << (32 - count);
  }
}

std::int64_t CountInk(const InkImage& ink) {
  return std::transform_reduce(ink.words.begin(), ink.words.end(), std::int64_t{0}, std::plus<>(),
                               [](std::uint32_t word) { return std::popcount(word); });
}

GreyImage Crop(const GreyImage& image, const Box& box) {
  const Box part = Intersection(box, {0, 0, image.width, image.height});
  GreyImage crop(part.width, part.height);
  for (int y = 0; y < part.height; ++y) {
    const std::uint8_t* from = image.row(part.y + y) + part.x;
    std::copy(from, from + part.width, crop.row(y));
  }
  return crop;
}

ColorImage Crop(const ColorImage& image, const Box& box) {
  constexpr std::size_t kBytesPerPixel = 3;
  const Box part = Intersection(box, {0, 0, image.width, image.height});
  const auto row_bytes = static_cast<std::size_t>(part.width) * kBytesPerPixel;
  ColorImage crop;
  crop.width = part.width;
  crop.height = part.height;
  crop.pixels.reserve(row_bytes * static_cast<std::size_t>(part.height));
  for (int y = part.y; y < part.bottom(); ++y) {
    const std::size_t row = static_cast<std::size_t>(y) * static_cast<std::size_t>(image.width);
    const std::uint8_t* const from = image.pixels.data() + (row + static_cast<std::size_t>(part.x)) * kBytesPerPixel;
    crop.pixels.insert(crop.pixels.end(), from, from + row_bytes);
  }
  return crop;
}

GreyImage Turned(GreyImage image, int degrees) {
  if (degrees == 0) {
    return image;
  }
  if (degrees == 180) {
    std::reverse(image.pixels.begin(), image.pixels.end());
    return image;
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
