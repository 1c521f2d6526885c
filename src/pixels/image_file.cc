#include "benchleaf/pixels/image_file.h"

#include "pixels/decode.h"
#include "pixels/pix.h"
#include "pixels/tiff_grey.h"

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <memory>
#include <optional>
#include <utility>

namespace benchleaf {
namespace {

struct FreeDeleter {
  void operator()(l_uint8* bytes) const { lept_free(bytes); }
};

const l_uint8* Bytes(std::string_view bytes) { return reinterpret_cast<const l_uint8*>(bytes.data()); }

}  // namespace

Result<l_int32> FormatOf(std::string_view bytes) {
  SilenceLeptonica();
  // Leptonica looks at the first 12 bytes without asking how many there are.
  constexpr std::size_t kMagicBytes = 12;
  l_int32 format = IFF_UNKNOWN;
  if (bytes.size() < kMagicBytes || findFileFormatBuffer(Bytes(bytes), &format) != 0) {
    return Fail(ErrorCode::kDamaged, "not a picture: its first bytes fit no known format");
  }
  switch (format) {
    case IFF_TIFF:
    case IFF_TIFF_PACKBITS:
    case IFF_TIFF_RLE:
    case IFF_TIFF_G3:
    case IFF_TIFF_G4:
    case IFF_TIFF_LZW:
    case IFF_TIFF_ZIP:
    case IFF_TIFF_JPEG:
      return IFF_TIFF;
    case IFF_PNG:
    case IFF_JFIF_JPEG:
      return format;
    default:
      return Fail(ErrorCode::kUnsupported, "a picture of a kind that is not read: convert it to TIFF, PNG or JPEG");
  }
}

Result<PixHandle> Decode(std::string_view bytes, int page) {
  const Result<l_int32> format = FormatOf(bytes);
  if (!format) {
    return tl::unexpected(format.error());
  }
  PixHandle pix;
  if (*format == IFF_TIFF) {
    pix.reset(pixReadMemTiff(Bytes(bytes), bytes.size(), page - 1));
  } else {
    pix.reset(pixReadMem(Bytes(bytes), bytes.size()));
  }
  if (!pix) {
    return Fail(ErrorCode::kDamaged, "the picture cannot be decoded: it is damaged or cut short");
  }
  return pix;
}

namespace {

// The lightness of a JPEG file alone, which it keeps apart from the colours: in a quarter of the memory that these
// take. Nothing for kinds of JPEG that do not keep it so.
std::optional<GreyImage> Lightness(std::string_view jpeg) {
  l_int32 warnings = 0;
  const PixHandle pix(pixReadMemJpeg(Bytes(jpeg), jpeg.size(), 0, 1, &warnings, L_JPEG_READ_LUMINANCE));
  return pix && pixGetDepth(pix.get()) == 8 ? std::optional(ToGrey(pix.get())) : std::nullopt;
}

// The picture without palette and transparency, at `depth` 8 (grey) or 32 (colour).
Result<PixHandle> Converted(PixHandle pix, int depth) {
  if (pixGetSpp(pix.get()) == 4) {
    pix.reset(pixAlphaBlendUniform(pix.get(), 0xffffff00));
  }
  if (pix && (pixGetDepth(pix.get()) != depth || pixGetColormap(pix.get()) != nullptr)) {
    pix.reset(depth == 8 ? pixConvertTo8(pix.get(), 0) : pixConvertTo32(pix.get()));
  }
  if (!pix) {
    return Fail(ErrorCode::kUnsupported, "the picture's depth or palette is of a kind that is not read");
  }
  return pix;
}

// What `write` puts into memory; empty when it fails.
template <class Write>
std::string Written(const Write& write) {
  l_uint8* data = nullptr;
  size_t size = 0;
  const bool written = write(&data, &size);
  const std::unique_ptr<l_uint8, FreeDeleter> owned(data);
  return written ? std::string(reinterpret_cast<const char*>(data), size) : std::string();
}

// Whether more than a speck of the picture is coloured: yellowed paper is, noise of a scanner's three sensors is not.
bool HasColor(const ColorImage& image) {
  constexpr int kLeastDifference = 24;
  std::size_t colored = 0;
  for (std::size_t i = 0; i + 2 < image.pixels.size(); i += 3) {
    const auto [least, most] = std::minmax({image.pixels[i], image.pixels[i + 1], image.pixels[i + 2]});
    if (most - least > kLeastDifference) ++colored;
  }
  constexpr std::size_t kOneOf = 3000;  // pixels
  return colored > image.pixels.size() / 3 / kOneOf;
}

}  // namespace

Result<PictureHeader> ReadPictureHeader(std::string_view bytes, int page) {
  const Result<l_int32> format = FormatOf(bytes);
  if (!format) {
    return tl::unexpected(format.error());
  }
  PictureHeader header;
  l_int32 x_dpi = 0;
  l_int32 y_dpi = 0;
  l_int32 bits = 0;
  l_int32 samples = 0;
  bool read = false;
  if (*format == IFF_TIFF) {
    l_int32 palette = 0;
    l_int32 compression = 0;
    read = readHeaderMemTiff(Bytes(bytes), bytes.size(), page - 1, &header.width, &header.height, &bits, &samples,
                             &x_dpi, &palette, &compression) == 0;
  } else if (*format == IFF_PNG) {
    read = readHeaderMemPng(Bytes(bytes), bytes.size(), &header.width, &header.height, &bits, &samples, nullptr) == 0;
    if (read) {
      std::unique_ptr<FILE, int (*)(FILE*)> file(fopenReadFromMemory(Bytes(bytes), bytes.size()), &std::fclose);
      if (file) {
        fgetPngResolution(file.get(), &x_dpi, &y_dpi);
      }
    }
  } else {
    l_int32 ycck = 0;
    l_int32 cmyk = 0;
    read = readHeaderMemJpeg(Bytes(bytes), bytes.size(), &header.width, &header.height, &samples, &ycck, &cmyk) == 0;
    if (read) {
      readResolutionMemJpeg(Bytes(bytes), bytes.size(), &x_dpi, &y_dpi);
    }
  }
  if (!read || header.width <= 0 || header.height <= 0) {
    return Fail(ErrorCode::kDamaged, "the picture's header cannot be read: the file is damaged or cut short");
  }
  header.dpi = x_dpi;
  return header;
}

Result<int> CountPictures(std::string_view bytes) {
  const Result<l_int32> format = FormatOf(bytes);
  if (!format) {
    return tl::unexpected(format.error());
  }
  if (*format != IFF_TIFF) {
    return 1;
  }
  std::unique_ptr<FILE, int (*)(FILE*)> file(fopenReadFromMemory(Bytes(bytes), bytes.size()), &std::fclose);
  l_int32 count = 0;
  if (!file || tiffGetCount(file.get(), &count) != 0 || count < 1) {
    return Fail(ErrorCode::kDamaged, "the pictures of the TIFF cannot be counted: it is damaged or cut short");
  }
  return count;
}

Result<GreyImage> DecodeGrey(std::string_view bytes, int page) {
  const Result<l_int32> format = FormatOf(bytes);
  // Most scans are of two kinds that take less memory by ways of their own.
  std::optional<GreyImage> grey = !format                    ? std::nullopt
                                  : *format == IFF_TIFF      ? ReadGreyTiff(bytes, page)
                                  : *format == IFF_JFIF_JPEG ? Lightness(bytes)
                                                             : std::nullopt;
  if (grey) {
    return std::move(*grey);
  }
  return Decode(bytes, page)
      .and_then([](PixHandle pix) { return Converted(std::move(pix), 8); })
      .map([](const PixHandle& pix) { return ToGrey(pix.get()); });
}

Result<ColorImage> DecodeColor(std::string_view bytes, int page) {
  return Decode(bytes, page)
      .and_then([](PixHandle pix) { return Converted(std::move(pix), 32); })
      .map([](const PixHandle& pix) { return ToColor(pix.get()); });
}

std::string EncodePng(const ColorImage& image) {
  const PixHandle pix = ToPix(image);
  return Written([&](l_uint8** data, size_t* size) { return pix && pixWriteMemPng(data, size, pix.get(), 0.0F) == 0; });
}

std::string EncodeJpeg(const ColorImage& image, int quality) {
  PixHandle pix = ToPix(image);
  if (pix && !HasColor(image)) pix.reset(pixConvertRGBToLuminance(pix.get()));
  constexpr l_int32 kProgressive = 1;
  return Written([&](l_uint8** data, size_t* size) {
    return pix && pixWriteMemJpeg(data, size, pix.get(), quality, kProgressive) == 0;
  });
}

ColorImage ScaledToFit(const ColorImage& image, int max_side_px) {
  const int longer = std::max(image.width, image.height);
  if (longer <= max_side_px) {
    return image;
  }
  const float factor = static_cast<float>(max_side_px) / static_cast<float>(longer);
  const PixHandle pix = ToPix(image);
  const PixHandle scaled(pix ? pixScaleAreaMap(pix.get(), factor, factor) : nullptr);
  return scaled ? ToColor(scaled.get()) : image;
}

}  // namespace benchleaf
