#include "bench/kept_readings.h"

#include "benchleaf/raster/page_source.h"
#include "benchleaf/record/codec.h"

#include <algorithm>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace benchleaf::bench {
namespace {

template <class T>
T OrThrow(Result<T> result) {
  if (!result) {
    throw std::runtime_error(result.error().ToString());
  }
  return std::move(*result);
}

std::string FileName(std::string name) {
  std::replace(name.begin(), name.end(), '/', '-');
  std::replace(name.begin(), name.end(), ' ', '-');
  return name + ".cbor";
}

}  // namespace

KeptReadings::KeptReadings(std::filesystem::path folder) : folder_(std::move(folder)) {
  if (!folder_.empty()) {
    std::filesystem::create_directories(folder_);
  }
}

PageReading KeptReadings::Read(const scanmaker::ScannedPage& page, const std::string& name) {
  if (folder_.empty()) {
    return ReadNow(page);
  }
  const std::filesystem::path path = folder_ / FileName(name);
  if (std::ifstream kept(path, std::ios::binary); kept) {
    std::ostringstream bytes;
    bytes << kept.rdbuf();
    return OrThrow(DecodeReading(bytes.str()));
  }
  PageReading reading = ReadNow(page);
  std::ofstream file(path, std::ios::binary);
  file << EncodeReading(reading);
  if (!file.flush()) {
    throw std::runtime_error(path.string() + ": cannot be written");
  }
  return reading;
}

PageReading KeptReadings::ReadNow(const scanmaker::ScannedPage& page) {
  if (!reader_) {
    reader_ = OrThrow(PageReader::Create(BENCHLEAF_SOURCE_DIR "/config"));
  }
  return OrThrow(reader_->Read(RasterPage{page.image, page.dpi, {}}, ReadingMode::kFull));
}

}  // namespace benchleaf::bench
