#include "reader-training/trainer/crop_file.h"

#include "benchleaf/lettering/line_strip.h"

#include <algorithm>
#include <fstream>
#include <stdexcept>
#include <utility>

namespace benchleaf::training {

std::vector<Crop> LoadCrops(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::vector<Crop> crops;
  for (int low = file.get(); low >= 0; low = file.get()) {
    Crop crop;
    crop.width = low + 256 * file.get();
    crop.text.resize(static_cast<std::size_t>(std::max(0, file.get())));
    file.read(crop.text.data(), static_cast<std::streamsize>(crop.text.size()));
    crop.pixels.resize(static_cast<std::size_t>(crop.width) * kStripRows);
    file.read(reinterpret_cast<char*>(crop.pixels.data()), static_cast<std::streamsize>(crop.pixels.size()));
    if (!file) {
      throw std::runtime_error(path + " ends within a crop");
    }
    crops.push_back(std::move(crop));
  }
  if (crops.empty()) {
    throw std::runtime_error(path + " holds no crops");
  }
  return crops;
}

}  // namespace benchleaf::training
