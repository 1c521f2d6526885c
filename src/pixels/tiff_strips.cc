#include "pixels/tiff_strips.h"

#include "pixels/tiff_in_memory.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>

namespace benchleaf {
namespace {

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
  const TiffInMemory file(tiff, page);
  TIFF* const open = file.get();
  if (open == nullptr || !file.InPlainStrips()) return std::nullopt;
  TiffStrips strips;
  strips.width = Tag<int>(open, TIFFTAG_IMAGEWIDTH);
  strips.height = Tag<int>(open, TIFFTAG_IMAGELENGTH);
  strips.rows = static_cast<int>(
      std::min(static_cast<std::uint32_t>(strips.height), Tag<std::uint32_t>(open, TIFFTAG_ROWSPERSTRIP)));
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
