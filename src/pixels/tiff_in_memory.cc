#include "pixels/tiff_in_memory.h"

#include <algorithm>
#include <cstdio>
#include <cstring>

namespace benchleaf {

TiffInMemory::TiffInMemory(std::string_view bytes, int page) : source_(std::make_unique<Source>(Source{bytes})) {
  // Its warnings would go to standard error.
  TIFFSetWarningHandler(nullptr);
  TIFFSetErrorHandler(nullptr);
  tiff_.reset(TIFFClientOpen("scan", "r", source_.get(), &Read, &Write, &Seek, &Close, &Size, &Map, &Unmap));
  if (tiff_ && TIFFSetDirectory(tiff_.get(), static_cast<tdir_t>(page - 1)) == 0) {
    tiff_.reset();
  }
}

bool TiffInMemory::InPlainStrips() const {
  constexpr std::uint32_t kMostSide = 1U << 20U;
  TIFF* const tiff = tiff_.get();
  const auto width = Tag<std::uint32_t>(tiff, TIFFTAG_IMAGEWIDTH);
  const auto height = Tag<std::uint32_t>(tiff, TIFFTAG_IMAGELENGTH);
  return TIFFIsTiled(tiff) == 0 && Tag<std::uint16_t>(tiff, TIFFTAG_ORIENTATION) == ORIENTATION_TOPLEFT &&
         Tag<std::uint16_t>(tiff, TIFFTAG_PLANARCONFIG) == PLANARCONFIG_CONTIG && width > 0 && height > 0 &&
         width <= kMostSide && height <= kMostSide;
}

tmsize_t TiffInMemory::Read(thandle_t source, void* into, tmsize_t wanted) {
  auto* from = static_cast<Source*>(source);
  const std::size_t there = from->bytes.size() - std::min(from->at, from->bytes.size());
  const std::size_t size = std::min(there, static_cast<std::size_t>(std::max<tmsize_t>(wanted, 0)));
  std::memcpy(into, from->bytes.data() + (from->bytes.size() - there), size);
  from->at += size;
  return static_cast<tmsize_t>(size);
}

tmsize_t TiffInMemory::Write(thandle_t /*source*/, void* /*from*/, tmsize_t /*size*/) { return 0; }

toff_t TiffInMemory::Seek(thandle_t source, toff_t by, int whence) {
  auto* from = static_cast<Source*>(source);
  const std::size_t start = whence == SEEK_CUR ? from->at : whence == SEEK_END ? from->bytes.size() : 0;
  from->at = start + static_cast<std::size_t>(by);
  return from->at;
}

int TiffInMemory::Close(thandle_t /*source*/) { return 0; }

toff_t TiffInMemory::Size(thandle_t source) { return static_cast<Source*>(source)->bytes.size(); }

// Lets libtiff look at the bytes where they are, so that it copies no strip, which may be a whole page.
int TiffInMemory::Map(thandle_t source, void** base, toff_t* size) {
  const std::string_view bytes = static_cast<Source*>(source)->bytes;
  *base = const_cast<char*>(bytes.data());  // only to be read, as a file's map is
  *size = bytes.size();
  return 1;
}

void TiffInMemory::Unmap(thandle_t /*source*/, void* /*base*/, toff_t /*size*/) {}

}  // namespace benchleaf
