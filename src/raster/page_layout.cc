#include "raster/page_layout.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>

namespace benchleaf {
namespace {

constexpr double kPointsPerInch = 72;
constexpr double kDrawnPageDpi = 300;
constexpr double kLowestDpi = 50;
constexpr double kHighestDpi = 1200;
constexpr double kSameResolution = 1.02;  // resolutions nearer than this are one
constexpr double kEnoughArea = 0.25;

// Pictures of one resolution, in the page's user space.
struct Layer {
  double x_dpi = 0;
  double y_dpi = 0;
  double area = 0;                     // square points
  std::optional<std::size_t> picture;  // the only one, by its place in the page's list

  double size() const { return std::sqrt(x_dpi * y_dpi); }
};

// The area of the upright rectangle round the placed picture, as far as it is visible.
double VisibleArea(const PageLayout& layout, const Affine& m) {
  const auto [left, right] = std::minmax({m.e, m.e + m.a, m.e + m.c, m.e + m.a + m.c});
  const auto [bottom, top] = std::minmax({m.f, m.f + m.b, m.f + m.d, m.f + m.b + m.d});
  const double width = std::min(right, layout.left + layout.width) - std::max(left, layout.left);
  const double height = std::min(top, layout.bottom + layout.height) - std::max(bottom, layout.bottom);
  return width > 0 && height > 0 ? width * height : 0;
}

Layer LayerOf(const PageLayout& layout, const PlacedPicture& picture) {
  const Affine& m = picture.placement;
  const double along_rows = std::hypot(m.a, m.b);
  const double along_columns = std::hypot(m.c, m.d);
  constexpr double kNothing = 1e-6;
  if (!(along_rows > kNothing) || !(along_columns > kNothing)) {
    return {};
  }
  Layer layer;
  layer.x_dpi = picture.width * kPointsPerInch / along_rows;
  layer.y_dpi = picture.height * kPointsPerInch / along_columns;
  if (std::abs(m.b) > std::abs(m.a)) {
    std::swap(layer.x_dpi, layer.y_dpi);
  }
  layer.area = VisibleArea(layout, m);
  return layer;
}

// Puts the pictures of one resolution together: scanners cut pages into strips. Lowest resolution first.
std::vector<Layer> Merged(std::vector<Layer> pictures) {
  std::sort(pictures.begin(), pictures.end(), [](const Layer& a, const Layer& b) { return a.size() < b.size(); });
  std::vector<Layer> layers;
  double first_size = 0;
  for (const Layer& picture : pictures) {
    if (layers.empty() || picture.size() > first_size * kSameResolution) {
      layers.push_back(picture);
      first_size = picture.size();
      continue;
    }
    Layer& layer = layers.back();
    const double share = picture.area / (layer.area + picture.area);
    layer.x_dpi += share * (picture.x_dpi - layer.x_dpi);
    layer.y_dpi += share * (picture.y_dpi - layer.y_dpi);
    layer.area += picture.area;
    layer.picture.reset();
  }
  return layers;
}

RenderResolution ChosenFrom(const std::vector<Layer>& layers, double page_area) {
  double all = 0;
  for (const Layer& layer : layers) {
    all += layer.area;
  }
  const double covered = std::min(all, page_area);  // layers lie upon one another
  Layer chosen;
  for (const Layer& layer : layers) {
    const bool enough = layer.area >= kEnoughArea * covered;
    const bool chosen_has_enough = chosen.area >= kEnoughArea * covered;
    if (enough || (!chosen_has_enough && layer.area > chosen.area)) {
      chosen = layer;
    }
  }
  return {chosen.x_dpi, chosen.y_dpi, chosen.picture};
}

bool IsOver(const RasterLimits& limits, int width, int height) {
  return width > limits.max_side_px || height > limits.max_side_px ||
         std::int64_t{width} * std::int64_t{height} > limits.max_pixels;
}

}  // namespace

Affine Chained(const Affine& first, const Affine& second) {
  return {first.a * second.a + first.b * second.c,
          first.a * second.b + first.b * second.d,
          first.c * second.a + first.d * second.c,
          first.c * second.b + first.d * second.d,
          first.e * second.a + first.f * second.c + second.e,
          first.e * second.b + first.f * second.d + second.f};
}

Result<RenderResolution> NativeResolution(const PageLayout& layout, const RasterLimits& limits) {
  if (!(layout.width > 0) || !(layout.height > 0) || !std::isfinite(layout.width) || !std::isfinite(layout.height)) {
    return Fail(ErrorCode::kDamaged, "the page has no area");
  }
  std::vector<Layer> pictures;
  for (std::size_t i = 0; i < layout.pictures.size(); ++i) {
    const PlacedPicture& picture = layout.pictures[i];
    Layer layer = LayerOf(layout, picture);
    if (!(layer.area > 0) || !std::isfinite(layer.size())) {
      continue;
    }
    if (IsOver(limits, picture.width, picture.height)) {
      return Fail(ErrorCode::kTooLarge, "holds a picture of " + std::to_string(picture.width) + " x " +
                                            std::to_string(picture.height) + " px, which is over the limits");
    }
    layer.picture = i;
    pictures.push_back(layer);
  }
  RenderResolution resolution{kDrawnPageDpi, kDrawnPageDpi, std::nullopt};
  if (!pictures.empty()) {
    resolution = ChosenFrom(Merged(std::move(pictures)), layout.width * layout.height);
  }
  const RenderResolution native = resolution;
  const double higher = std::max(resolution.x_dpi, resolution.y_dpi);
  if (higher > kSameResolution * std::min(resolution.x_dpi, resolution.y_dpi)) {
    resolution.x_dpi = resolution.y_dpi = higher;
  }
  resolution.x_dpi = std::clamp(resolution.x_dpi, kLowestDpi, kHighestDpi);
  resolution.y_dpi = std::clamp(resolution.y_dpi, kLowestDpi, kHighestDpi);

  const double width = layout.width * resolution.x_dpi / kPointsPerInch;
  const double height = layout.height * resolution.y_dpi / kPointsPerInch;
  const double fit = std::min({1.0, limits.max_side_px / width, limits.max_side_px / height,
                               std::sqrt(static_cast<double>(limits.max_pixels) / (width * height))});
  resolution.x_dpi *= fit;
  resolution.y_dpi *= fit;
  if (fit < 1 && std::min(resolution.x_dpi, resolution.y_dpi) < kLowestDpi) {
    return Fail(ErrorCode::kTooLarge, "measures " + std::to_string(std::lround(layout.width / kPointsPerInch)) + " x " +
                                          std::to_string(std::lround(layout.height / kPointsPerInch)) +
                                          " inches, which is over the limits even at 50 dpi");
  }
  if (resolution.x_dpi != native.x_dpi || resolution.y_dpi != native.y_dpi) {
    resolution.picture.reset();
  }
  if (layout.turn == 90 || layout.turn == 270) {
    std::swap(resolution.x_dpi, resolution.y_dpi);
  }
  return resolution;
}

}  // namespace benchleaf
