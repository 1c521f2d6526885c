#include "scan-maker/jpeg_round_trip.h"

// clang-format off
#include <cstdio>  // jpeglib.h needs it first
#include <jpeglib.h>
// clang-format on

#include <cstdlib>
#include <memory>
#include <stdexcept>
#include <string>

namespace benchleaf::scanmaker {
namespace {

// libjpeg's own handler ends the process.
void Throw(j_common_ptr codec) {
  char message[JMSG_LENGTH_MAX];
  codec->err->format_message(codec, message);
  throw std::runtime_error(std::string("libjpeg: ") + message);
}

struct FreeBytes {
  void operator()(unsigned char* bytes) const { std::free(bytes); }  // NOLINT(cppcoreguidelines-no-malloc): libjpeg's
};

struct Encoded {
  std::unique_ptr<unsigned char, FreeBytes> bytes;
  unsigned long size = 0;
};

Encoded Encode(const GreyImage& image, int quality) {
  jpeg_error_mgr errors;
  jpeg_compress_struct codec;
  codec.err = jpeg_std_error(&errors);
  errors.error_exit = Throw;
  jpeg_create_compress(&codec);
  const std::unique_ptr<jpeg_compress_struct, decltype(&jpeg_destroy_compress)> owner(&codec, jpeg_destroy_compress);

  unsigned char* bytes = nullptr;
  Encoded encoded;
  jpeg_mem_dest(&codec, &bytes, &encoded.size);
  codec.image_width = static_cast<JDIMENSION>(image.width);
  codec.image_height = static_cast<JDIMENSION>(image.height);
  codec.input_components = 1;
  codec.in_color_space = JCS_GRAYSCALE;
  jpeg_set_defaults(&codec);
  jpeg_set_quality(&codec, quality, TRUE);
  jpeg_start_compress(&codec, TRUE);
  while (codec.next_scanline < codec.image_height) {
    JSAMPROW row = const_cast<JSAMPROW>(image.row(static_cast<int>(codec.next_scanline)));
    jpeg_write_scanlines(&codec, &row, 1);
  }
  jpeg_finish_compress(&codec);
  encoded.bytes.reset(bytes);
  return encoded;
}

}  // namespace

GreyImage JpegRoundTrip(const GreyImage& image, int quality) {
  const Encoded encoded = Encode(image, quality);

  jpeg_error_mgr errors;
  jpeg_decompress_struct codec;
  codec.err = jpeg_std_error(&errors);
  errors.error_exit = Throw;
  jpeg_create_decompress(&codec);
  const std::unique_ptr<jpeg_decompress_struct, decltype(&jpeg_destroy_decompress)> owner(&codec,
                                                                                          jpeg_destroy_decompress);
  jpeg_mem_src(&codec, encoded.bytes.get(), encoded.size);
  jpeg_read_header(&codec, TRUE);
  jpeg_start_decompress(&codec);
  GreyImage result(image.width, image.height);
  while (codec.output_scanline < codec.output_height) {
    JSAMPROW row = result.row(static_cast<int>(codec.output_scanline));
    jpeg_read_scanlines(&codec, &row, 1);
  }
  jpeg_finish_decompress(&codec);
  return result;
}

}  // namespace benchleaf::scanmaker
