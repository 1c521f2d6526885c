#include "pixels/made_tiff.h"

#include <gtest/gtest.h>
#include <tiffio.h>
#include <unistd.h>

#include <cstddef>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace benchleaf {
namespace {

void WritePage(TIFF* tiff, const MadeTiffPage& page) {
  TIFFSetField(tiff, TIFFTAG_IMAGEWIDTH, page.width);
  TIFFSetField(tiff, TIFFTAG_IMAGELENGTH, page.height);
  TIFFSetField(tiff, TIFFTAG_SAMPLESPERPIXEL, page.samples);
  TIFFSetField(tiff, TIFFTAG_BITSPERSAMPLE, page.bits);
  TIFFSetField(tiff, TIFFTAG_COMPRESSION, page.compression);
  TIFFSetField(tiff, TIFFTAG_PHOTOMETRIC, page.photometric);
  TIFFSetField(tiff, TIFFTAG_FILLORDER, page.fill_order);
  TIFFSetField(tiff, TIFFTAG_ORIENTATION, page.orientation);
  TIFFSetField(tiff, TIFFTAG_PLANARCONFIG, PLANARCONFIG_CONTIG);
  TIFFSetField(tiff, TIFFTAG_ROWSPERSTRIP, page.rows > 0 ? page.rows : page.height);
  if (page.compression == COMPRESSION_JPEG && page.photometric == PHOTOMETRIC_YCBCR) {
    TIFFSetField(tiff, TIFFTAG_JPEGCOLORMODE, JPEGCOLORMODE_RGB);
  }
  for (int y = 0; y < page.height; ++y) {
    std::vector<std::uint8_t> row = RowOfMadeTiff(page, y);
    EXPECT_EQ(TIFFWriteScanline(tiff, row.data(), static_cast<std::uint32_t>(y), 0), 1);
  }
  EXPECT_EQ(TIFFWriteDirectory(tiff), 1);
}

// Numbers that look like chance.
unsigned Mixed(unsigned number) {
  number = (number ^ number >> 15U) * 2246822519U;
  number = (number ^ number >> 13U) * 3266489917U;
  return number ^ number >> 16U;
}

}  // namespace

std::vector<std::uint8_t> RowOfMadeTiff(const MadeTiffPage& page, int row) {
  std::vector<std::uint8_t> bytes;
  if (page.bits == 1) {
    bytes.resize((static_cast<std::size_t>(page.width) + 7) / 8);
    for (int x = 0; x < page.width; ++x) {
      // Strokes that stand anywhere, with the ragged edges of a scan.
      const unsigned ragged = Mixed(static_cast<unsigned>(row)) % 3;
      const unsigned stroke = Mixed((static_cast<unsigned>(x) + ragged) / 9 * 1009 + static_cast<unsigned>(row) / 5);
      if (stroke % 4 == 0) bytes[static_cast<std::size_t>(x) / 8] |= static_cast<std::uint8_t>(0x80U >> (x % 8));
    }
    return bytes;
  }
  for (int x = 0; x < page.width; ++x) {
    for (int sample = 0; sample < page.samples; ++sample) {
      bytes.push_back(static_cast<std::uint8_t>((x * (sample + 1) + row * 2 + (x / 16 + row / 16) % 2 * 60) % 256));
    }
  }
  return bytes;
}

std::string MadeTiff(const std::vector<MadeTiffPage>& pages) {
  std::string name = (std::filesystem::temp_directory_path() / "benchleaf-tiff-XXXXXX").string();
  close(mkstemp(name.data()));
  TIFF* tiff = TIFFOpen(name.c_str(), "w");
  EXPECT_NE(tiff, nullptr);
  for (const MadeTiffPage& page : pages) WritePage(tiff, page);
  TIFFClose(tiff);
  std::ostringstream bytes;
  bytes << std::ifstream(name, std::ios::binary).rdbuf();
  std::filesystem::remove(name);
  return bytes.str();
}

}  // namespace benchleaf
