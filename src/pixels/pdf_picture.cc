#include "benchleaf/pixels/pdf_picture.h"

#include "pixels/decode.h"
#include "pixels/jpeg_strips.h"
#include "pixels/pix.h"
#include "pixels/tiff_strips.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <memory>
#include <optional>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::size_t kSignature = 8;  // PNG: ISO/IEC 15948, 5.2
constexpr std::size_t kChunkHead = 8;  // length and type
constexpr std::size_t kChunkTail = 4;  // checksum
constexpr std::uint8_t kGrey = 0;      // colour types: 11.2.2
constexpr std::uint8_t kRgb = 2;

std::uint32_t BigEndian(std::string_view bytes) {
  std::uint32_t value = 0;
  for (const char c : bytes.substr(0, 4)) value = value << 8U | static_cast<std::uint8_t>(c);
  return value;
}

// The rows of a PNG file that a PDF can show as they are (ISO 32000-1, 7.4.4.4): grey or RGB of at most 8 bits, not
// interlaced, without transparency. Nothing for any other file.
std::optional<PdfPicture> RowsOf(std::string_view png) {
  PdfPicture picture;
  bool shown = false;
  for (std::size_t at = kSignature; at + kChunkHead + kChunkTail <= png.size();) {
    const std::size_t length = BigEndian(png.substr(at));
    const std::string_view type = png.substr(at + 4, 4);
    if (length > png.size() - at - kChunkHead - kChunkTail) return std::nullopt;
    const std::string_view content = png.substr(at + kChunkHead, length);
    if (type == "IHDR" && length == 13) {
      picture.width = static_cast<int>(BigEndian(content));
      picture.height = static_cast<int>(BigEndian(content.substr(4)));
      picture.bits = static_cast<std::uint8_t>(content[8]);
      const auto color = static_cast<std::uint8_t>(content[9]);
      picture.components = color == kRgb ? 3 : 1;
      shown = (color == kGrey || color == kRgb) && picture.bits <= 8 && content[12] == 0;
    } else if (type == "tRNS") {
      return std::nullopt;
    } else if (type == "IDAT") {
      picture.bytes += content;
    } else if (type == "IEND") {
      return shown && !picture.bytes.empty() ? std::optional(std::move(picture)) : std::nullopt;
    }
    at += kChunkHead + length + kChunkTail;
  }
  return std::nullopt;
}

// A TIFF's page in the coding that it has there. Nothing where a PDF cannot show that.
std::optional<PdfPicture> CodedPage(std::string_view tiff, int page) {
  auto strips = ReadTiffStrips(tiff, page);
  if (!strips) return std::nullopt;
  PdfPicture picture;
  picture.width = strips->width;
  picture.height = strips->height;
  picture.components = strips->samples;
  if (strips->coding == TiffStrips::Coding::kJpeg) {
    auto jpeg = JoinedJpeg(*strips);
    if (!jpeg) return std::nullopt;
    picture.coding = PdfPicture::Coding::kJpeg;
    picture.bytes = std::move(*jpeg);
    return picture;
  }
  // Each strip refers to the row above, which the first of another strip does not have.
  if (strips->strips.size() != 1) return std::nullopt;
  picture.coding = PdfPicture::Coding::kGroup4;
  picture.bits = 1;
  picture.inverted = strips->black_is_white;
  picture.bytes = std::move(strips->strips.front());
  return picture;
}

// What Leptonica writes into memory in that format; empty when it fails.
std::string FileOf(const PixHandle& pix, l_int32 format) {
  l_uint8* data = nullptr;
  size_t size = 0;
  const bool written = pix && pixWriteMem(&data, &size, pix.get(), format) == 0;
  const std::unique_ptr<l_uint8, void (*)(void*)> owned(data, &lept_free);
  return written ? std::string(reinterpret_cast<const char*>(data), size) : std::string();
}

Result<PdfPicture> Repacked(PixHandle pix) {
  if (pixGetSpp(pix.get()) == 4) pix.reset(pixAlphaBlendUniform(pix.get(), 0xffffff00));
  if (pix && pixGetColormap(pix.get()) != nullptr) {
    pix.reset(pixRemoveColormap(pix.get(), REMOVE_CMAP_BASED_ON_SRC));
  }
  if (pix && pixGetDepth(pix.get()) == 16) pix.reset(pixConvert16To8(pix.get(), L_MS_BYTE));
  auto rows = RowsOf(FileOf(pix, IFF_PNG));
  if (!rows) return Fail(ErrorCode::kUnsupported, "the picture's depth or palette is of a kind that is not packed");
  if (pixGetDepth(pix.get()) == 1) {
    auto fax = CodedPage(FileOf(pix, IFF_TIFF_G4), 1);
    if (fax && fax->bytes.size() < rows->bytes.size()) return std::move(*fax);
  }
  return std::move(*rows);
}

Result<PdfPicture> WholeJpeg(std::string_view bytes) {
  PdfPicture picture;
  picture.coding = PdfPicture::Coding::kJpeg;
  l_int32 ycck = 0;
  l_int32 cmyk = 0;
  if (readHeaderMemJpeg(reinterpret_cast<const l_uint8*>(bytes.data()), bytes.size(), &picture.width, &picture.height,
                        &picture.components, &ycck, &cmyk) != 0) {
    return Fail(ErrorCode::kDamaged, "the picture's header cannot be read: the file is damaged or cut short");
  }
  // Programs that write four inks into JPEG write them inverted and say so by Adobe's marker, with which ycck comes.
  picture.inverted = picture.components == 4 && bytes.find("Adobe") != std::string_view::npos;
  picture.bytes = bytes;
  return picture;
}

}  // namespace

Result<PdfPicture> PackForPdf(std::string_view bytes, int page) {
  const Result<l_int32> format = FormatOf(bytes);
  if (!format) return tl::unexpected(format.error());
  if (*format == IFF_JFIF_JPEG) return WholeJpeg(bytes);
  if (*format == IFF_PNG) {
    if (auto rows = RowsOf(bytes)) return std::move(*rows);
  }
  if (*format == IFF_TIFF) {
    if (auto coded = CodedPage(bytes, page)) return std::move(*coded);
  }
  return Decode(bytes, page).and_then(&Repacked);
}

}  // namespace benchleaf
