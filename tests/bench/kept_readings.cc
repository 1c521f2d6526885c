#include "bench/kept_readings.h"

#include "benchleaf/record/codec.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace benchleaf::bench {

KeptReadings::KeptReadings(const std::filesystem::path& folder) : folder_(folder) {
  if (!folder_.empty()) {
    std::filesystem::create_directories(folder_);
  }
}

PageReading KeptReadings::Get(const std::string& name, const std::function<PageReading()>& read) const {
  if (folder_.empty()) {
    return read();
  }
  const std::filesystem::path path = folder_ / (name + ".cbor");
  if (std::ifstream in(path, std::ios::binary); in) {
    std::ostringstream bytes;
    bytes << in.rdbuf();
    Result<PageReading> kept = DecodeReading(bytes.str());
    if (!kept) {
      throw std::runtime_error(path.string() + ": " + kept.error().ToString());
    }
    return std::move(*kept);
  }
  PageReading reading = read();
  std::filesystem::create_directories(path.parent_path());  // names of sheets hold folders
  std::ofstream out(path, std::ios::binary);
  if (!(out << EncodeReading(reading)).flush()) {
    throw std::runtime_error(path.string() + " cannot be written");
  }
  return reading;
}

}  // namespace benchleaf::bench
