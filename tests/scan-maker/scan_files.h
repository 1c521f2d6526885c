// Writes scanned pages into the kinds of files in which scans come: PDF, TIFF, PNG and JPEG.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SCAN_FILES_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SCAN_FILES_H_

#include "scan-maker/made_page.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

// A word of a hidden text layer.
struct HiddenWord {
  std::string text;
  FractionBox box;
};

struct FilePage {
  GreyImage image;
  double dpi = 300;
  bool one_bit = false;  // kept as black and white, darker than `threshold` is black
  int threshold = 128;
  int jpeg_quality = 55;          // where it is kept as JPEG
  std::vector<HiddenWord> layer;  // of a PDF; behind the picture
};

// All of these throw std::runtime_error, naming the file, when it cannot be written. Same pages: same bytes.
void WriteJpegFile(const std::filesystem::path& path, const FilePage& page);
// Grey in sixteen steps, or black and white.
void WritePngFile(const std::filesystem::path& path, const FilePage& page);
// Black-and-white pages with CCITT Group 4, grey ones with LZW.
void WriteTiffFile(const std::filesystem::path& path, const std::vector<FilePage>& pages);
// Grey pages as JPEG, black-and-white ones as 1-bit masks.
void WritePdfFile(const std::filesystem::path& path, const std::vector<FilePage>& pages);

// What a poor recognition program would have kept of the page: words missing, and letters taken for others.
std::vector<HiddenWord> PoorLayer(const PageTruth& truth, std::uint64_t seed);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SCAN_FILES_H_
