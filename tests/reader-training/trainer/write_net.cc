#include "reader-training/trainer/write_net.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <fstream>
#include <stdexcept>

namespace benchleaf::training {
namespace {

void Put(std::ofstream& file, std::size_t number, int bytes) {
  for (int i = 0; i < bytes; ++i) file.put(static_cast<char>(number >> (8 * i)));
}

void PutReal(std::ofstream& file, float number) { Put(file, std::bit_cast<std::uint32_t>(number), 4); }

}  // namespace

void WriteNet(const std::string& path, const Net& net) {
  std::ofstream file(path, std::ios::binary);
  file << kNetMagic;
  Put(file, net.characters.size(), 2);
  for (const std::string& character : net.characters) {
    Put(file, character.size(), 1);
    file << character;
  }
  Put(file, net.layers.size(), 1);
  for (const NetLayer& layer : net.layers) {
    Put(file, layer.in, 2);
    Put(file, layer.out, 2);
    for (const std::size_t small :
         {layer.kernel_rows, layer.kernel_columns, std::size_t{layer.padded_rows}, std::size_t{layer.residual},
          std::size_t{layer.rectified}, layer.pool_rows, layer.pool_columns}) {
      Put(file, small, 1);
    }
    const std::size_t count = layer.weights.size() / layer.out;
    for (std::size_t out = 0; out < layer.out; ++out) {
      const float* weights = layer.weights.data() + out * count;
      float largest = 1e-9F;
      for (std::size_t i = 0; i < count; ++i) largest = std::max(largest, std::abs(weights[i]));
      const float step = largest / 127;
      PutReal(file, step);
      PutReal(file, layer.bias[out]);
      for (std::size_t i = 0; i < count; ++i) {
        file.put(static_cast<char>(std::lround(weights[i] / step)));
      }
    }
  }
  if (!file.flush()) {
    throw std::runtime_error(path + " cannot be written");
  }
}

}  // namespace benchleaf::training
