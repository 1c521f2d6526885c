#include "lettering/net_file.h"

#include "benchleaf/lettering/lettering_net.h"
#include "benchleaf/lettering/line_strip.h"

#include <bit>
#include <cstdint>
#include <fstream>
#include <optional>
#include <string_view>
#include <system_error>
#include <utility>

namespace benchleaf {
namespace {

// Takes numbers from the front of bytes; once they are at an end, all that follows is nought and `ended` is true.
class Bytes {
 public:
  explicit Bytes(std::string_view bytes) : bytes_(bytes) {}

  std::string_view Text(std::size_t length) {
    if (bytes_.size() < length) {
      ended_ = true;
      bytes_ = {};
      return {};
    }
    const std::string_view text = bytes_.substr(0, length);
    bytes_.remove_prefix(length);
    return text;
  }
  std::uint32_t Number(std::size_t length) {
    std::uint32_t number = 0;
    const std::string_view text = Text(length);
    for (std::size_t i = text.size(); i-- > 0;) number = number << 8 | static_cast<unsigned char>(text[i]);
    return number;
  }
  float Real() { return std::bit_cast<float>(Number(4)); }
  bool ended() const { return ended_; }
  bool empty() const { return bytes_.empty(); }

 private:
  std::string_view bytes_;
  bool ended_ = false;
};

NetLayer TakeLayer(Bytes& bytes) {
  NetLayer layer;
  layer.in = bytes.Number(2);
  layer.out = bytes.Number(2);
  layer.kernel_rows = bytes.Number(1);
  layer.kernel_columns = bytes.Number(1);
  layer.padded_rows = bytes.Number(1) != 0;
  layer.residual = bytes.Number(1) != 0;
  layer.rectified = bytes.Number(1) != 0;
  layer.pool_rows = bytes.Number(1);
  layer.pool_columns = bytes.Number(1);
  const std::size_t count = layer.in * layer.kernel_rows * layer.kernel_columns;
  for (std::size_t i = 0; i < layer.out && !bytes.ended(); ++i) {
    const float step = bytes.Real();
    layer.bias.push_back(bytes.Real());
    for (const char weight : bytes.Text(count)) {
      layer.weights.push_back(step * static_cast<float>(static_cast<signed char>(weight)));
    }
  }
  return layer;
}

// Whether each layer takes what the one before gives, and the last gives one row of a number for each symbol at each
// step.
bool FitsStrips(const Net& net) {
  std::size_t channels = 1;
  std::size_t rows = kStripRows;
  std::size_t step = 1;
  for (const NetLayer& layer : net.layers) {
    const bool even = layer.kernel_columns % 2 == 0 || (layer.padded_rows && layer.kernel_rows % 2 == 0);
    if (layer.in != channels || layer.out == 0 || layer.kernel_rows == 0 || layer.pool_rows == 0 ||
        layer.pool_columns == 0 || even || (layer.residual && (layer.in != layer.out || !layer.padded_rows)) ||
        rows < layer.kernel_rows) {
      return false;
    }
    channels = layer.out;
    rows = (layer.padded_rows ? rows : rows - layer.kernel_rows + 1) / layer.pool_rows;
    step *= layer.pool_columns;
  }
  return rows == 1 && step == kStepPx && channels == net.characters.size() + 1;
}

std::optional<Net> Parse(std::string_view text) {
  Bytes bytes(text);
  Net net;
  if (bytes.Text(kNetMagic.size()) != kNetMagic) {
    return std::nullopt;
  }
  for (std::uint32_t left = bytes.Number(2); left > 0; --left) {
    net.characters.emplace_back(bytes.Text(bytes.Number(1)));
  }
  for (std::uint32_t left = bytes.Number(1); left > 0; --left) {
    net.layers.push_back(TakeLayer(bytes));
  }
  return bytes.ended() || !bytes.empty() || !FitsStrips(net) ? std::nullopt : std::optional(std::move(net));
}

}  // namespace

Result<Net> LoadNet(const std::filesystem::path& file) {
  constexpr std::uintmax_t kLargest = 16U << 20;  // bytes; ours has under a million
  std::error_code problem;
  const std::uintmax_t size = std::filesystem::file_size(file, problem);
  std::string text(problem || size > kLargest ? 0 : static_cast<std::size_t>(size), '\0');
  std::ifstream(file, std::ios::binary).read(text.data(), static_cast<std::streamsize>(text.size()));
  std::optional<Net> net = Parse(text);
  if (!net) {
    return Fail(ErrorCode::kMissing, file.string() +
                                         ", the reader of drawings' lettering, is missing or damaged: restore it from "
                                         "benchleaf's config folder");
  }
  return std::move(*net);
}

}  // namespace benchleaf
