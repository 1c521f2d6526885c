#include "benchleaf/lettering/lettering_net.h"

#include "lettering/net_file.h"

#include "benchleaf/lettering/line_strip.h"

#include <blis-serial/cblas.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <utility>

namespace benchleaf {
namespace {

// Planes of numbers, one a channel.
struct Planes {
  std::size_t channels = 0;
  std::size_t rows = 0;
  std::size_t columns = 0;
  std::vector<float> values;

  std::size_t plane() const { return rows * columns; }
  void Shape(std::size_t new_channels, std::size_t new_rows, std::size_t new_columns) {
    channels = new_channels;
    rows = new_rows;
    columns = new_columns;
    values.resize(channels * rows * columns);
  }
};

// A row of `from`, moved left by `shift` columns (right where negative); what comes in from beyond is nought.
void CopyShifted(const float* from, std::size_t columns, std::ptrdiff_t shift, float* to) {
  const auto width = static_cast<std::ptrdiff_t>(columns);
  const std::ptrdiff_t begin = std::clamp<std::ptrdiff_t>(-shift, 0, width);
  const std::ptrdiff_t end = std::clamp<std::ptrdiff_t>(width - shift, begin, width);
  std::fill(to, to + begin, 0.0F);
  std::copy(from + begin + shift, from + end + shift, to + begin);
  std::fill(to + end, to + width, 0.0F);
}

// For each weight of an output, in their order, the numbers of `in` that it multiplies, one a place of the output.
void Unroll(const Planes& in, const NetLayer& layer, std::size_t rows_out, std::vector<float>& unrolled) {
  const std::size_t places = rows_out * in.columns;
  unrolled.resize(layer.in * layer.kernel_rows * layer.kernel_columns * places);
  float* to = unrolled.data();
  const auto up = static_cast<std::ptrdiff_t>(layer.padded_rows ? layer.kernel_rows / 2 : 0);
  const auto left = static_cast<std::ptrdiff_t>(layer.kernel_columns / 2);
  for (std::size_t channel = 0; channel < layer.in; ++channel) {
    const float* plane = in.values.data() + channel * in.plane();
    for (std::ptrdiff_t dy = -up; dy < static_cast<std::ptrdiff_t>(layer.kernel_rows) - up; ++dy) {
      for (std::ptrdiff_t dx = -left; dx < static_cast<std::ptrdiff_t>(layer.kernel_columns) - left; ++dx) {
        for (std::size_t row = 0; row < rows_out; ++row, to += in.columns) {
          const std::ptrdiff_t from = static_cast<std::ptrdiff_t>(row) + dy;
          if (from < 0 || from >= static_cast<std::ptrdiff_t>(in.rows)) {
            std::fill(to, to + in.columns, 0.0F);
          } else {
            CopyShifted(plane + static_cast<std::size_t>(from) * in.columns, in.columns, dx, to);
          }
        }
      }
    }
  }
}

void Pool(const Planes& in, std::size_t pool_rows, std::size_t pool_columns, Planes& out) {
  out.Shape(in.channels, in.rows / pool_rows, in.columns / pool_columns);
  float* to = out.values.data();
  for (std::size_t channel = 0; channel < in.channels; ++channel) {
    const float* plane = in.values.data() + channel * in.plane();
    for (std::size_t row = 0; row < out.rows; ++row) {
      for (std::size_t column = 0; column < out.columns; ++column, ++to) {
        float largest = plane[row * pool_rows * in.columns + column * pool_columns];
        for (std::size_t y = 0; y < pool_rows; ++y) {
          const float* from = plane + (row * pool_rows + y) * in.columns + column * pool_columns;
          for (std::size_t x = 0; x < pool_columns; ++x) largest = std::max(largest, from[x]);
        }
        *to = largest;
      }
    }
  }
}

// Adds to `sum`, rows x columns, the product of `a` (rows x depth) and `b` (depth x columns), all row by row.
void AddProduct(std::size_t rows, std::size_t depth, std::size_t columns, const std::vector<float>& a,
                const std::vector<float>& b, std::vector<float>& sum) {
  const auto m = static_cast<f77_int>(rows);
  const auto n = static_cast<f77_int>(columns);
  const auto k = static_cast<f77_int>(depth);
  cblas_sgemm(CblasRowMajor, CblasNoTrans, CblasNoTrans, m, n, k, 1, a.data(), k, b.data(), n, 1, sum.data(), n);
}

// Each place's numbers, one a channel, become logarithms of chances.
StepChances ChancesOf(const Planes& planes) {
  StepChances chances;
  chances.steps = planes.plane();
  chances.symbols = planes.channels;
  chances.log_chances.resize(chances.steps * chances.symbols);
  for (std::size_t step = 0; step < chances.steps; ++step) {
    const auto value = [&](std::size_t symbol) { return planes.values[symbol * chances.steps + step]; };
    float largest = value(0);
    for (std::size_t symbol = 1; symbol < chances.symbols; ++symbol) largest = std::max(largest, value(symbol));
    float sum = 0;
    for (std::size_t symbol = 0; symbol < chances.symbols; ++symbol) sum += std::exp(value(symbol) - largest);
    const float log_sum = largest + std::log(sum);
    for (std::size_t symbol = 0; symbol < chances.symbols; ++symbol) {
      chances.log_chances[step * chances.symbols + symbol] = value(symbol) - log_sum;
    }
  }
  return chances;
}

}  // namespace

class LetteringNet::Impl {
 public:
  explicit Impl(Net net) : net_(std::move(net)) {}

  const std::vector<std::string>& characters() const { return net_.characters; }

  StepChances Run(const GreyImage& strip) {
    Load(strip);
    for (const NetLayer& layer : net_.layers) {
      Apply(layer);
    }
    return ChancesOf(now_);
  }

 private:
  void Load(const GreyImage& strip) {
    const auto width = static_cast<std::size_t>(strip.width);
    now_.Shape(1, kStripRows, (width + kStepPx - 1) / kStepPx * kStepPx);
    std::fill(now_.values.begin(), now_.values.end(), 0.0F);
    for (int y = 0; y < kStripRows; ++y) {
      std::transform(strip.row(y), strip.row(y) + strip.width,
                     now_.values.begin() + static_cast<std::ptrdiff_t>(static_cast<std::size_t>(y) * now_.columns),
                     [](std::uint8_t level) { return static_cast<float>(255 - level) / 255; });
    }
  }

  void Apply(const NetLayer& layer) {
    const std::size_t rows = layer.padded_rows ? now_.rows : now_.rows - layer.kernel_rows + 1;
    Unroll(now_, layer, rows, unrolled_);
    next_.Shape(layer.out, rows, now_.columns);
    const std::size_t places = next_.plane();
    for (std::size_t channel = 0; channel < layer.out; ++channel) {
      float* plane = next_.values.data() + channel * places;
      std::fill(plane, plane + places, layer.bias[channel]);
      if (layer.residual) {
        const float* before = now_.values.data() + channel * places;
        std::transform(plane, plane + places, before, plane, std::plus<>());
      }
    }
    AddProduct(layer.out, layer.in * layer.kernel_rows * layer.kernel_columns, places, layer.weights, unrolled_,
               next_.values);
    if (layer.rectified) {
      for (float& value : next_.values) value = std::max(0.0F, value);
    }
    if (layer.pool_rows > 1 || layer.pool_columns > 1) {
      Pool(next_, layer.pool_rows, layer.pool_columns, now_);
    } else {
      std::swap(now_, next_);
    }
  }

  Net net_;
  Planes now_;
  Planes next_;
  std::vector<float> unrolled_;
};

LetteringNet::LetteringNet(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
LetteringNet::~LetteringNet() = default;

Result<std::unique_ptr<LetteringNet>> LetteringNet::Load(const std::filesystem::path& file) {
  Result<Net> net = LoadNet(file);
  if (!net) {
    return tl::unexpected(std::move(net.error()));
  }
  return std::unique_ptr<LetteringNet>(new LetteringNet(std::make_unique<Impl>(std::move(*net))));
}

const std::vector<std::string>& LetteringNet::characters() const { return impl_->characters(); }

StepChances LetteringNet::Run(const GreyImage& strip) { return impl_->Run(strip); }

}  // namespace benchleaf
