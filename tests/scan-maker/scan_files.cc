#include "scan-maker/scan_files.h"

#include "scan-maker/jpeg_round_trip.h"
#include "scan-maker/seeded_random.h"

#include <cairo-pdf.h>
#include <cairo.h>
#include <png.h>
#include <tiffio.h>

#include <cmath>
#include <cstddef>
#include <cstdio>
#include <fstream>
#include <map>
#include <memory>
#include <stdexcept>

namespace benchleaf::scanmaker {
namespace {

[[noreturn]] void Refuse(const std::filesystem::path& path) {
  throw std::runtime_error("cannot write " + path.string());
}

// A row in packed form with `bits` a pixel, 1 or 4, first pixel in the high bits; black is 0.
std::vector<std::uint8_t> Packed(const FilePage& page, int y, int bits) {
  const int per_byte = 8 / bits;
  std::vector<std::uint8_t> bytes(static_cast<std::size_t>((page.image.width + per_byte - 1) / per_byte), 0);
  const std::uint8_t* row = page.image.row(y);
  for (int x = 0; x < page.image.width; ++x) {
    const int level = bits == 1 ? (row[x] >= page.threshold ? 1 : 0) : row[x] >> 4;
    const int shift = 8 - bits * (x % per_byte + 1);
    std::uint8_t& byte = bytes[static_cast<std::size_t>(x / per_byte)];
    byte = static_cast<std::uint8_t>(byte | (level << shift));
  }
  return bytes;
}

struct CloseFile {
  void operator()(std::FILE* file) const { std::fclose(file); }
};

// libpng's own handler jumps.
void ThrowPng(png_structp /*png*/, png_const_charp message) {
  throw std::runtime_error(std::string("libpng: ") + message);
}

struct PngWriter {
  png_structp png = nullptr;
  png_infop info = nullptr;

  PngWriter() {
    png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, ThrowPng, nullptr);
    info = png_create_info_struct(png);
  }
  ~PngWriter() { png_destroy_write_struct(&png, &info); }
  PngWriter(const PngWriter&) = delete;
  PngWriter& operator=(const PngWriter&) = delete;
};

void WriteTiffPage(TIFF* tiff, const FilePage& page) {
  const auto width = static_cast<std::uint32_t>(page.image.width);
  const auto height = static_cast<std::uint32_t>(page.image.height);
  TIFFSetField(tiff, TIFFTAG_SUBFILETYPE, FILETYPE_PAGE);
  TIFFSetField(tiff, TIFFTAG_IMAGEWIDTH, width);
  TIFFSetField(tiff, TIFFTAG_IMAGELENGTH, height);
  TIFFSetField(tiff, TIFFTAG_SAMPLESPERPIXEL, 1);
  TIFFSetField(tiff, TIFFTAG_BITSPERSAMPLE, page.one_bit ? 1 : 8);
  TIFFSetField(tiff, TIFFTAG_PLANARCONFIG, PLANARCONFIG_CONTIG);
  TIFFSetField(tiff, TIFFTAG_PHOTOMETRIC, page.one_bit ? PHOTOMETRIC_MINISWHITE : PHOTOMETRIC_MINISBLACK);
  TIFFSetField(tiff, TIFFTAG_COMPRESSION, page.one_bit ? COMPRESSION_CCITTFAX4 : COMPRESSION_LZW);
  TIFFSetField(tiff, TIFFTAG_ROWSPERSTRIP, height);
  TIFFSetField(tiff, TIFFTAG_RESOLUTIONUNIT, RESUNIT_INCH);
  TIFFSetField(tiff, TIFFTAG_XRESOLUTION, page.dpi);
  TIFFSetField(tiff, TIFFTAG_YRESOLUTION, page.dpi);
  for (int y = 0; y < page.image.height; ++y) {
    std::vector<std::uint8_t> row(page.image.row(y), page.image.row(y) + page.image.width);
    if (page.one_bit) {
      row = Packed(page, y, 1);
      for (std::uint8_t& byte : row) {
        byte = static_cast<std::uint8_t>(~byte);
      }
    }
    if (TIFFWriteScanline(tiff, row.data(), static_cast<std::uint32_t>(y), 0) < 0) {
      throw std::runtime_error("libtiff cannot write a row");
    }
  }
  if (TIFFWriteDirectory(tiff) == 0) {
    throw std::runtime_error("libtiff cannot end a page");
  }
}

struct DestroySurface {
  void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};
using SurfacePtr = std::unique_ptr<cairo_surface_t, DestroySurface>;

// The page's picture as Cairo takes it: a 1-bit mask of the ink, or a grey picture that brings its JPEG with it.
SurfacePtr PictureOf(const FilePage& page) {
  const int width = page.image.width;
  const int height = page.image.height;
  SurfacePtr surface(cairo_image_surface_create(page.one_bit ? CAIRO_FORMAT_A1 : CAIRO_FORMAT_RGB24, width, height));
  if (!page.one_bit) {
    // Cairo writes the attached bytes and never looks at the pixels.
    auto* jpeg = new std::string(EncodeJpeg(page.image, page.jpeg_quality, static_cast<int>(std::lround(page.dpi))));
    cairo_surface_set_mime_data(
        surface.get(), CAIRO_MIME_TYPE_JPEG, reinterpret_cast<const unsigned char*>(jpeg->data()), jpeg->size(),
        [](void* bytes) { delete static_cast<std::string*>(bytes); }, jpeg);
    return surface;
  }
  unsigned char* bits = cairo_image_surface_get_data(surface.get());
  const int stride = cairo_image_surface_get_stride(surface.get());
  for (int y = 0; y < height; ++y, bits += stride) {
    for (int x = 0; x < width; ++x) {
      if (page.image.row(y)[x] < page.threshold) {
        // The first pixel is in the lowest bit on machines that store the lowest byte first.
        bits[x / 8] = static_cast<unsigned char>(bits[x / 8] | (1U << (static_cast<unsigned>(x) % 8U)));
      }
    }
  }
  cairo_surface_mark_dirty(surface.get());
  return surface;
}

void DrawLayer(cairo_t* cairo, const std::vector<HiddenWord>& layer, double width, double height) {
  cairo_select_font_face(cairo, "Liberation Serif", CAIRO_FONT_SLANT_NORMAL, CAIRO_FONT_WEIGHT_NORMAL);
  for (const HiddenWord& word : layer) {
    // Capitals of this face are two thirds of its size.
    cairo_set_font_size(cairo, word.box.height * height / 0.66);
    cairo_move_to(cairo, word.box.x * width, (word.box.y + word.box.height) * height);
    cairo_show_text(cairo, word.text.c_str());
  }
}

void DrawPdfPage(cairo_t* cairo, const FilePage& page) {
  const double points = 72 / page.dpi;
  DrawLayer(cairo, page.layer, page.image.width * points, page.image.height * points);
  const SurfacePtr picture = PictureOf(page);
  cairo_save(cairo);
  if (page.one_bit) {
    // The mask lets the layer shine through: paper goes between them.
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_paint(cairo);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    cairo_scale(cairo, points, points);
    cairo_mask_surface(cairo, picture.get(), 0, 0);
  } else {
    cairo_scale(cairo, points, points);
    cairo_set_source_surface(cairo, picture.get(), 0, 0);
    cairo_paint(cairo);
  }
  cairo_restore(cairo);
  cairo_show_page(cairo);
}

}  // namespace

void WriteJpegFile(const std::filesystem::path& path, const FilePage& page) {
  const std::string bytes = EncodeJpeg(page.image, page.jpeg_quality, static_cast<int>(std::lround(page.dpi)));
  std::ofstream out(path, std::ios::binary);
  out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  out.close();
  if (!out) {
    Refuse(path);
  }
}

void WritePngFile(const std::filesystem::path& path, const FilePage& page) {
  const std::unique_ptr<std::FILE, CloseFile> file(std::fopen(path.c_str(), "wb"));
  if (!file) {
    Refuse(path);
  }
  const int bits = page.one_bit ? 1 : 4;
  const PngWriter writer;
  png_init_io(writer.png, file.get());
  png_set_compression_level(writer.png, 9);
  png_set_IHDR(writer.png, writer.info, static_cast<png_uint_32>(page.image.width),
               static_cast<png_uint_32>(page.image.height), bits, PNG_COLOR_TYPE_GRAY, PNG_INTERLACE_NONE,
               PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  const auto dots_a_metre = static_cast<png_uint_32>(std::lround(page.dpi / 0.0254));
  png_set_pHYs(writer.png, writer.info, dots_a_metre, dots_a_metre, PNG_RESOLUTION_METER);
  png_write_info(writer.png, writer.info);
  for (int y = 0; y < page.image.height; ++y) {
    png_write_row(writer.png, Packed(page, y, bits).data());
  }
  png_write_end(writer.png, writer.info);
}

void WriteTiffFile(const std::filesystem::path& path, const std::vector<FilePage>& pages) {
  const std::unique_ptr<TIFF, decltype(&TIFFClose)> tiff(TIFFOpen(path.c_str(), "wl"), TIFFClose);
  if (!tiff) {
    Refuse(path);
  }
  for (const FilePage& page : pages) {
    WriteTiffPage(tiff.get(), page);
  }
}

void WritePdfFile(const std::filesystem::path& path, const std::vector<FilePage>& pages) {
  const SurfacePtr surface(cairo_pdf_surface_create(path.c_str(), 612, 792));
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, "2000-01-01T00:00:00Z");
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, "Invented manual - sample data");
  const std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cairo(cairo_create(surface.get()), cairo_destroy);
  for (const FilePage& page : pages) {
    cairo_pdf_surface_set_size(surface.get(), page.image.width * 72 / page.dpi, page.image.height * 72 / page.dpi);
    DrawPdfPage(cairo.get(), page);
  }
  cairo_surface_finish(surface.get());
  if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS) {
    Refuse(path);
  }
}

std::vector<HiddenWord> PoorLayer(const PageTruth& truth, std::uint64_t seed) {
  static const std::map<char, char> kTakenFor = {{'0', 'O'}, {'1', 'l'}, {'5', 'S'}, {'8', 'B'}, {'6', 'G'},
                                                 {'2', 'Z'}, {'R', 'K'}, {'C', 'G'}, {'V', 'Y'}, {'M', 'H'}};
  SeededRandom random(seed);
  std::vector<HiddenWord> layer;
  for (const TruthTerm& term : truth.terms) {
    // Such programs know upright text only, and drop what they find odd.
    if (term.turn != 0 || random.Unit() < 0.15) {
      continue;
    }
    HiddenWord word{term.text, term.box};
    for (char& c : word.text) {
      const auto taken = kTakenFor.find(c);
      if (taken != kTakenFor.end() && random.Unit() < 0.18) {
        c = taken->second;
      }
    }
    layer.push_back(word);
  }
  return layer;
}

}  // namespace benchleaf::scanmaker
