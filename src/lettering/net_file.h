// The file of a net: its characters, and its layers with their weights. Private to lettering/.
//
// "benchleaf net 1\n"; the count of characters (2 bytes, the lower first), each as its length (1) and UTF-8; the count
// of layers (1); for each layer its channels in and out (2 and 2), rows and columns of its kernel, whether rows are
// padded, whether what went in is added, whether it is rectified, rows and columns of the pool (1 each); for each
// output its step and bias (IEEE 754 binary32, 4 each) and its weights (1 each, from -127 to 127, in steps).

#ifndef BENCHLEAF_SRC_LETTERING_NET_FILE_H_
#define BENCHLEAF_SRC_LETTERING_NET_FILE_H_

#include "benchleaf/core/result.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

inline constexpr std::string_view kNetMagic = "benchleaf net 1\n";

// A convolution, what is added, the rectifier, and the largest of each pool, in that order.
struct NetLayer {
  std::size_t in = 0;   // channels
  std::size_t out = 0;  // channels
  std::size_t kernel_rows = 1;
  std::size_t kernel_columns = 1;
  bool padded_rows = true;  // so that as many rows come out as went in; columns always are
  bool residual = false;    // what went in is added
  bool rectified = true;
  std::size_t pool_rows = 1;
  std::size_t pool_columns = 1;
  std::vector<float> weights;  // out x in x kernel_rows x kernel_columns
  std::vector<float> bias;     // out
};

struct Net {
  std::vector<std::string> characters;  // UTF-8
  std::vector<NetLayer> layers;
};

// Fails with kMissing when the file cannot be read, is no net, or is one that does not fit strips.
Result<Net> LoadNet(const std::filesystem::path& file);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_LETTERING_NET_FILE_H_
