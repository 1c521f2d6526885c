// A page of a TIFF whose bytes lie in memory. Private to pixels/.

#ifndef BENCHLEAF_SRC_PIXELS_TIFF_IN_MEMORY_H_
#define BENCHLEAF_SRC_PIXELS_TIFF_IN_MEMORY_H_

#include <tiffio.h>

#include <cstddef>
#include <cstdint>
#include <memory>
#include <string_view>

namespace benchleaf {

class TiffInMemory {
 public:
  // `page` counts from 1. The bytes must outlive this, which copies none of them.
  TiffInMemory(std::string_view bytes, int page);

  // The page, or null where there is none.
  TIFF* get() const { return tiff_.get(); }

  // Whether the page lies in strips, all samples of a pixel together, upright, with sides of 1 to 2^20 px.
  bool InPlainStrips() const;

 private:
  struct Closer {
    void operator()(TIFF* tiff) const { TIFFClose(tiff); }
  };
  // What libtiff reads from.
  struct Source {
    std::string_view bytes;
    std::size_t at = 0;
  };
  static tmsize_t Read(thandle_t source, void* into, tmsize_t wanted);
  static tmsize_t Write(thandle_t source, void* from, tmsize_t size);
  static toff_t Seek(thandle_t source, toff_t by, int whence);
  static int Close(thandle_t source);
  static toff_t Size(thandle_t source);
  static int Map(thandle_t source, void** base, toff_t* size);
  static void Unmap(thandle_t source, void* base, toff_t size);

  std::unique_ptr<Source> source_;
  std::unique_ptr<TIFF, Closer> tiff_;
};

// A field of the page, or what the standard takes for it where it is not stated.
template <class Number>
Number Tag(TIFF* tiff, std::uint32_t tag) {
  Number value = 0;
  TIFFGetFieldDefaulted(tiff, tag, &value);
  return value;
}

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_PIXELS_TIFF_IN_MEMORY_H_
