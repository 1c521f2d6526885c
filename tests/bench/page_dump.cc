#include "bench/page_dump.h"

#include "scan-maker/truth.h"

#include "benchleaf/core/image.h"
#include "benchleaf/raster/page_source.h"

#include <cstdint>
#include <fstream>
#include <stdexcept>

namespace benchleaf::bench {
namespace {

ColorImage Colored(const GreyImage& image) {
  ColorImage color;
  color.width = image.width;
  color.height = image.height;
  color.pixels.reserve(3 * image.pixels.size());
  for (const std::uint8_t level : image.pixels) color.pixels.insert(color.pixels.end(), 3, level);
  return color;
}

}  // namespace

PageDump::PageDump(const std::filesystem::path& folder) : folder_(folder) {
  if (!folder_.empty()) {
    std::filesystem::create_directories(folder_);
  }
}

void PageDump::Add(const std::string& grade, const scanmaker::ScannedPage& page) {
  if (folder_.empty()) {
    return;
  }
  const std::string name = grade + "-" + std::filesystem::path(page.truth.file).stem().string() + ".png";
  if (const Result<void> written = WritePng(folder_ / name, Colored(page.image)); !written) {
    throw std::runtime_error(written.error().ToString());
  }
  truth_.push_back(page.truth);
  truth_.back().file = name;
  std::ofstream(folder_ / "truth.jsonl") << scanmaker::ToJsonLines(truth_);
}

}  // namespace benchleaf::bench
