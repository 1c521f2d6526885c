// A 1-bit picture seen along its rows or along its columns, so that lying and standing lines are one case. Private to
// pixels/.

#ifndef BENCHLEAF_SRC_PIXELS_LANES_H_
#define BENCHLEAF_SRC_PIXELS_LANES_H_

#include <leptonica/allheaders.h>

#include <bit>
#include <cstddef>

namespace benchleaf {

// The rows of the picture, or its columns, each a lane with places along it. Does not own the picture.
class Lanes {
 public:
  // REQUIRES: 1 bit a pixel.
  Lanes(Pix* pix, bool columns)
      : data_(pixGetData(pix)),
        words_a_row_(static_cast<std::size_t>(pixGetWpl(pix))),
        width_(pixGetWidth(pix)),
        height_(pixGetHeight(pix)),
        columns_(columns) {}

  int count() const { return columns_ ? width_ : height_; }
  int length() const { return columns_ ? height_ : width_; }

  bool Has(int lane, int place) const {
    const int x = columns_ ? lane : place;
    return (Row(columns_ ? place : lane)[x >> 5] >> (31U - (static_cast<unsigned>(x) & 31U)) & 1U) != 0;
  }
  void Set(int lane, int place) const {
    const int x = columns_ ? lane : place;
    Row(columns_ ? place : lane)[x >> 5] |= 1U << (31U - (static_cast<unsigned>(x) & 31U));
  }

  // Calls `each(lane, place)` for all ink, in order along every lane. Goes row by row, for that is how the picture lies
  // in memory, and passes over empty words of 32 px.
  template <class Each>
  void ForEachInk(const Each& each) const {
    for (int y = 0; y < height_; ++y) {
      for (std::size_t i = 0; i < words_a_row_; ++i) {
        for (l_uint32 word = Row(y)[i]; word != 0;) {
          const int bit = std::countl_zero(word);
          word &= ~(1U << (31 - bit));
          const int x = static_cast<int>(i) * 32 + bit;
          columns_ ? each(x, y) : each(y, x);
        }
      }
    }
  }

 private:
  l_uint32* Row(int y) const { return data_ + static_cast<std::size_t>(y) * words_a_row_; }

  l_uint32* data_;
  std::size_t words_a_row_;
  int width_;
  int height_;
  bool columns_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_PIXELS_LANES_H_
