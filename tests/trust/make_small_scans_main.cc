// make-small-scans OUT SAMPLE: cuts small pages out of the sample scan, a PNG or JPEG, and writes them into the folder
// OUT in every format that is read. They are quick to index, for campaigns of many runs.

#include "scan-maker/scan_files.h"

#include "benchleaf/pixels/image_file.h"

#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
namespace maker = benchleaf::scanmaker;

maker::FilePage Small(const benchleaf::GreyImage& page, int part, bool one_bit) {
  constexpr int kWidth = 700;
  constexpr int kHeight = 400;
  maker::FilePage small;
  small.image = Crop(page, {page.width / 4, page.height / 8 + part * kHeight, kWidth, kHeight});
  small.dpi = 200;
  small.one_bit = one_bit;
  return small;
}

void WriteAll(const fs::path& out, const benchleaf::GreyImage& page) {
  fs::create_directories(out / "pictures");
  maker::FilePage layered = Small(page, 3, false);
  layered.layer = {{"C12", {0.1, 0.1, 0.1, 0.05}}, {"6CB6", {0.5, 0.5, 0.1, 0.05}}};
  maker::WriteJpegFile(out / "pictures" / "page-1.jpg", Small(page, 0, false));
  maker::WritePngFile(out / "pictures" / "page-2.png", Small(page, 1, false));
  maker::WritePngFile(out / "pictures" / "page-3.png", Small(page, 2, true));
  maker::WriteTiffFile(out / "both.tif", {Small(page, 3, true), Small(page, 0, false)});
  maker::WritePdfFile(out / "both.pdf", {Small(page, 1, true), Small(page, 2, false)});
  maker::WritePdfFile(out / "layered.pdf", {layered});
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3) {
    std::fputs("usage: make-small-scans OUT SAMPLE\n", stderr);
    return 2;
  }
  std::ostringstream bytes;
  bytes << std::ifstream(argv[2], std::ios::binary).rdbuf();
  const auto page = benchleaf::DecodeGrey(bytes.str(), 1);
  if (!page) {
    std::fprintf(stderr, "make-small-scans: %s: %s\n", argv[2], page.error().message.c_str());
    return 1;
  }
  try {
    WriteAll(argv[1], *page);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "make-small-scans: %s\n", error.what());
    return 1;
  }
  return 0;
}
