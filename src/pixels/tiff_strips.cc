#include "pixels/tiff_strips.h"

#include <tiffio.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <memory>

namespace benchleaf {
namespace {

// A TIFF in memory, as libtiff asks for it.
struct InMemory {
  std::string_view bytes;
  std::size_t at = 0;
};

tmsize_t ReadSome(thandle_t handle, void* into, tmsize_t wanted) {
  auto* file = static_cast<InMemory*>(handle);
  const std::size_t there = file->bytes.size() - std::min(file->at, file->bytes.size());
  const std::size_t size = std::min(there, static_cast<std::size_t>(std::max<tmsize_t>(wanted, 0)));
  std::memcpy(into, file->bytes.data() + (file->bytes.size() - there), size);
  file->at += size;
  return static_cast<tmsize_t>(size);
}

tmsize_t WriteNothing(thandle_t /*handle*/, void* /*from*/, tmsize_t /*size*/) { return 0; }

toff_t Seek(thandle_t handle, toff_t by, int whence) {
  auto* file = static_cast<InMemory*>(handle);
  const std::size_t from = whence == SEEK_CUR ? file->at : whence == SEEK_END ? file->bytes.size() : 0;
  file->at = from + static_cast<std::size_t>(by);
  return file->at;
}

int Close(thandle_t /*handle*/) { return 0; }

toff_t Size(thandle_t handle) { return static_cast<InMemory*>(handle)->bytes.size(); }

struct TiffCloser {
  void operator()(TIFF* tiff) const { TIFFClose(tiff); }
};
using TiffHandle = std::unique_ptr<TIFF, TiffCloser>;

TiffHandle Opened(InMemory& file) {
  // Its warnings would go to standard error.
  TIFFSetWarningHandler(nullptr);
  TIFFSetErrorHandler(nullptr);
  return TiffHandle(
      TIFFClientOpen("scan", "rm", &file, &ReadSome, &WriteNothing, &Seek, &Close, &Size, nullptr, nullptr));
}

template <class Number>
Number Tag(TIFF* tiff, std::uint32_t tag) {
  Number value = 0;
  TIFFGetFieldDefaulted(tiff, tag, &value);
  return value;
}

// Takes coding and colours; false where they are not of the kinds that are told of.
bool TakeKind(TIFF* tiff, TiffStrips& strips) {
  const auto compression = Tag<std::uint16_t>(tiff, TIFFTAG_COMPRESSION);
  const auto bits = Tag<std::uint16_t>(tiff, TIFFTAG_BITSPERSAMPLE);
  const auto colors = Tag<std::uint16_t>(tiff, TIFFTAG_PHOTOMETRIC);
  strips.samples = Tag<std::uint16_t>(tiff, TIFFTAG_SAMPLESPERPIXEL);
  if (compression == COMPRESSION_CCITTFAX4) {
    strips.coding = TiffStrips::Coding::kGroup4;
    strips.black_is_white = colors == PHOTOMETRIC_MINISBLACK;
    // T.6 allows parts that are not compressed; no reader of PDF takes them.
    return bits == 1 && strips.samples == 1 && Tag<std::uint32_t>(tiff, TIFFTAG_GROUP4OPTIONS) == 0 &&
           (colors == PHOTOMETRIC_MINISBLACK || colors == PHOTOMETRIC_MINISWHITE);
  }
  strips.coding = TiffStrips::Coding::kJpeg;
  strips.luma_and_chroma = colors == PHOTOMETRIC_YCBCR;
  return compression == COMPRESSION_JPEG && bits == 8 &&
         ((strips.samples == 1 && colors == PHOTOMETRIC_MINISBLACK) ||
          (strips.samples == 3 && (colors == PHOTOMETRIC_YCBCR || colors == PHOTOMETRIC_RGB)));
}

// Takes the strips' bytes; false where they are more than the file has.
bool TakeStrips(TIFF* tiff, std::size_t most, TiffStrips& strips) {
  const bool low_bit_first =
      strips.coding == TiffStrips::Coding::kGroup4 && Tag<std::uint16_t>(tiff, TIFFTAG_FILLORDER) == FILLORDER_LSB2MSB;
  const tstrip_t count = TIFFNumberOfStrips(tiff);
  if (count > static_cast<tstrip_t>(strips.height)) return false;
  for (tstrip_t i = 0; i < count; ++i) {
    const std::uint64_t size = TIFFRawStripSize64(tiff, i);
    if (size == 0 || size > most) return false;
    most -= static_cast<std::size_t>(size);
    std::string strip(static_cast<std::size_t>(size), '\0');
    if (TIFFReadRawStrip(tiff, i, strip.data(), static_cast<tmsize_t>(size)) != static_cast<tmsize_t>(size)) {
      return false;
    }
    if (low_bit_first) {
      TIFFReverseBits(reinterpret_cast<std::uint8_t*>(strip.data()), static_cast<tmsize_t>(strip.size()));
    }
    strips.strips.push_back(std::move(strip));
  }
  return count > 0;
}

}  // namespace

std::optional<TiffStrips> ReadTiffStrips(std::string_view tiff, int page) {
  InMemory file{tiff};
  const TiffHandle handle = Opened(file);
  TIFF* const open = handle.get();
  if (open == nullptr || TIFFSetDirectory(open, static_cast<tdir_t>(page - 1)) == 0) return std::nullopt;
  if (TIFFIsTiled(open) != 0 || Tag<std::uint16_t>(open, TIFFTAG_ORIENTATION) != ORIENTATION_TOPLEFT ||
      Tag<std::uint16_t>(open, TIFFTAG_PLANARCONFIG) != PLANARCONFIG_CONTIG) {
    return std::nullopt;
  }
  constexpr std::uint32_t kMostSide = 1U << 20U;
  const auto width = Tag<std::uint32_t>(open, TIFFTAG_IMAGEWIDTH);
  const auto height = Tag<std::uint32_t>(open, TIFFTAG_IMAGELENGTH);
  if (width == 0 || height == 0 || width > kMostSide || height > kMostSide) return std::nullopt;
  TiffStrips strips;
  strips.width = static_cast<int>(width);
  strips.height = static_cast<int>(height);
  strips.rows = static_cast<int>(std::min(height, Tag<std::uint32_t>(open, TIFFTAG_ROWSPERSTRIP)));
  if (!TakeKind(open, strips)) return std::nullopt;
  std::uint32_t tables_size = 0;
  const void* tables = nullptr;
  if (strips.coding == TiffStrips::Coding::kJpeg &&
      TIFFGetField(open, TIFFTAG_JPEGTABLES, &tables_size, &tables) != 0) {
    strips.tables.assign(static_cast<const char*>(tables), tables_size);
  }
  if (!TakeStrips(open, tiff.size(), strips)) return std::nullopt;
  return strips;
}

}  // namespace benchleaf
