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

// A 1-bit picture: 1 is ink, 0 is ground. Rows from the top, each in words of 32 pixels with the leftmost pixel in the
// highest bit; what the last word has beyond the width is 0.
struct InkImage {
  int width = 0;   // px
  int height = 0;  // px
  std::vector<std::uint32_t> words;

  // A row to look at.
  class ConstRow {
   public:
    ConstRow(const std::uint32_t* words, int width) : words_(words), width_(width) {}
    int operator[](int x) const { return static_cast<int>((words_[x >> 5] >> (31 - (x & 31))) & 1U); }
    // The first pixel from `x` on that is ink, or ground; the width when there is none.
    int NextInk(int x) const { return Next(x, 0U); }
    int NextGround(int x) const { return Next(x, ~0U); }

   private:
    int Next(int x, std::uint32_t skipped) const;
    const std::uint32_t* words_;
    int width_;
  };

  // One pixel to set. Set to itself it stays as it is, unasked.
  class Pixel {
   public:
    Pixel(std::uint32_t& word, int bit) : word_(word), bit_(bit) {}
    Pixel(const Pixel&) = default;
    Pixel& operator=(int value) {
      word_ = (word_ & ~(1U << bit_)) | (static_cast<std::uint32_t>(value & 1) << bit_);
      return *this;
    }
    Pixel& operator=(const Pixel& other) { return *this = static_cast<int>(other); }  // NOLINT(cert-oop54-cpp)
    operator int() const { return static_cast<int>((word_ >> bit_) & 1U); }  // NOLINT(google-explicit-constructor)

   private:
    std::uint32_t& word_;
    int bit_;
  };

  // A row to write to.
  class Row {
   public:
    explicit Row(std::uint32_t* words) : words_(words) {}
    Pixel operator[](int x) const { return {words_[x >> 5], 31 - (x & 31)}; }
    // Inks the pixels from `begin` to before `end`, which must lie within the picture.
    void Ink(int begin, int end) const;
    // Takes the first `width` pixels from bytes that are 1 for ink, else 0.
    void Take(const std::uint8_t* is_ink, int width) const;

   private:
    std::uint32_t* words_;
  };

  InkImage() = default;
  InkImage(int w, int h)
      : width(w), height(h), words(static_cast<std::size_t>(WordsFor(w)) * static_cast<std::size_t>(h), 0) {}

  static int WordsFor(int width) { return (width + 31) / 32; }
  int words_per_row() const { return WordsFor(width); }

  bool empty() const { return words.empty(); }
  std::uint32_t* row_words(int y) { return words.data() + Offset(y); }
  const std::uint32_t* row_words(int y) const { return words.data() + Offset(y); }
  Row row(int y) { return Row(row_words(y)); }
  ConstRow row(int y) const { return {row_words(y), width}; }

  friend bool operator==(const InkImage&, const InkImage&) = default;

 private:
  std::size_t Offset(int y) const { return static_cast<std::size_t>(y) * static_cast<std::size_t>(words_per_row()); }
};

// px of ink.
std::int64_t CountInk(const InkImage& ink);

// The part of the picture under `box`, which is cut to the picture first.
GreyImage Crop(const GreyImage& image, const Box& box);
ColorImage Crop(const ColorImage& image, const Box& box);

// The picture turned clockwise by 0, 90, 180 or 270 degrees.
// REQUIRES: degrees is one of these.
GreyImage Turned(GreyImage image, int degrees);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_IMAGE_H_
