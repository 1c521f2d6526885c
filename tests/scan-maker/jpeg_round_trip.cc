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

}  // namespace

std::string EncodeJpeg(const GreyImage& image, int quality, int dpi) {
  jpeg_error_mgr errors;
  jpeg_compress_struct codec;
  codec.err = jpeg_std_error(&errors);
  errors.error_exit = Throw;
  jpeg_create_compress(&codec);
  const std::unique_ptr<jpeg_compress_struct, decltype(&jpeg_destroy_compress)> owner(&codec, jpeg_destroy_compress);

  unsigned char* bytes = nullptr;
  unsigned long size = 0;
  jpeg_mem_dest(&codec, &bytes, &size);
  codec.image_width = static_cast<JDIMENSION>(image.width);
  codec.image_height = static_cast<JDIMENSION>(image.height);
  codec.input_components = 1;
  codec.in_color_space = JCS_GRAYSCALE;
  jpeg_set_defaults(&codec);
  jpeg_set_quality(&codec, quality, TRUE);
  if (dpi > 0) {
    codec.density_unit = 1;  // dots an inch
    codec.X_density = static_cast<UINT16>(dpi);
    codec.Y_density = static_cast<UINT16>(dpi);
  }
  jpeg_start_compress(&codec, TRUE);
  while (codec.next_scanline < codec.image_height) {
    JSAMPROW row = const_cast<JSAMPROW>(image.row(static_cast<int>(codec.next_scanline)));
    jpeg_write_scanlines(&codec, &row, 1);
  }
  jpeg_finish_compress(&codec);
  const std::unique_ptr<unsigned char, FreeBytes> holder(bytes);
  return {reinterpret_cast<const char*>(bytes), size};
}

GreyImage JpegRoundTrip(const GreyImage& image, int quality) {
  const std::string encoded = EncodeJpeg(image, quality);

  jpeg_error_mgr errors;
  jpeg_decompress_struct codec;
  codec.err = jpeg_std_error(&errors);
  errors.error_exit = Throw;
  jpeg_create_decompress(&codec);
  const std::unique_ptr<jpeg_decompress_struct, decltype(&jpeg_destroy_decompress)> owner(&codec,
                                                                                          jpeg_destroy_decompress);
  jpeg_mem_src(&codec, reinterpret_cast<const unsigned char*>(encoded.data()), encoded.size());
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
