#include "net_file.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <fstream>
#include <stdexcept>

namespace benchleaf::training {
namespace {

void Put(std::ofstream& file, std::uint32_t number, int bytes) {
  for (int i = 0; i < bytes; ++i) file.put(static_cast<char>(number >> (8 * i)));
}

}  // namespace

void WriteNet(const std::string& path, const std::vector<std::string>& characters, const std::vector<Layer>& layers) {
  std::ofstream file(path, std::ios::binary);
  file << "benchleaf net 1\n";
  Put(file, static_cast<std::uint32_t>(characters.size()), 2);
  for (const std::string& character : characters) {
    Put(file, static_cast<std::uint32_t>(character.size()), 1);
    file << character;
  }
  Put(file, static_cast<std::uint32_t>(layers.size()), 1);
  for (const Layer& layer : layers) {
    Put(file, static_cast<std::uint32_t>(layer.in), 2);
    Put(file, static_cast<std::uint32_t>(layer.out), 2);
    for (const int small : {layer.kernel_rows, layer.kernel_columns, layer.padded_rows ? 1 : 0, layer.residual ? 1 : 0,
                            layer.rectified ? 1 : 0, layer.pool_rows, layer.pool_columns}) {
      Put(file, static_cast<std::uint32_t>(small), 1);
    }
    const std::size_t count = layer.weights.size() / static_cast<std::size_t>(layer.out);
    for (std::size_t out = 0; out < static_cast<std::size_t>(layer.out); ++out) {
      const float* weights = layer.weights.data() + out * count;
      float largest = 1e-9F;
      for (std::size_t i = 0; i < count; ++i) largest = std::max(largest, std::abs(weights[i]));
      const float step = largest / 127;
      Put(file, std::bit_cast<std::uint32_t>(step), 4);
      Put(file, std::bit_cast<std::uint32_t>(layer.bias[out]), 4);
      for (std::size_t i = 0; i < count; ++i) {
        Put(file, static_cast<std::uint32_t>(static_cast<int>(std::lround(weights[i] / step))), 1);
      }
    }
  }
  if (!file.flush()) {
    throw std::runtime_error(path + " cannot be written");
  }
}

}  // namespace benchleaf::training
