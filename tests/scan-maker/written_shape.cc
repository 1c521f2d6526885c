#include "scan-maker/written_shape.h"

#include <cmath>
#include <cstddef>
#include <numbers>

namespace benchleaf::scanmaker {

WrittenShape::Wave WrittenShape::WaveOf(double amplitude, SeededRandom& random) {
  // From one wave over two letters to one over half a letter: finer ones would be a trembling hand.
  const double per_cap = 2 * std::numbers::pi * random.Between(0.5, 2);
  const double way = random.Between(0, 2 * std::numbers::pi);
  return {amplitude, per_cap * std::cos(way), per_cap * std::sin(way), random.Between(0, 2 * std::numbers::pi)};
}

WrittenShape::WrittenShape(double looseness, std::uint64_t seed, std::string_view letter, SeededRandom& occurrence)
    : still_(looseness == 0) {
  SeededRandom own(SeedOf(seed, letter));
  const auto drawn = [&](SeededRandom& random, double part) {
    const double most = part * looseness;
    width_ += random.Between(-2, 2) * most;
    height_ += random.Between(-1, 1) * most;
    slant_ += random.Between(-1, 1) * most;
    rise_ += random.Between(-0.6, 0.6) * most;
  };
  constexpr double kOwn = 0.75;
  drawn(own, kOwn);
  drawn(occurrence, 1 - kOwn);
  for (std::size_t i = 0; i < across_.size(); ++i) {
    const bool is_own = i + 1 < across_.size();
    SeededRandom& random = is_own ? own : occurrence;
    const double amplitude = looseness * (is_own ? kOwn / 2 : 1 - kOwn);
    across_.at(i) = WaveOf(amplitude, random);
    up_.at(i) = WaveOf(amplitude, random);
  }
}

StrokePoint WrittenShape::At(StrokePoint template_point) const {
  if (still_) {
    return template_point;
  }
  const auto [x, y] = template_point;
  StrokePoint moved = {x * width_ + slant_ * y, y * height_ + rise_};
  for (std::size_t i = 0; i < across_.size(); ++i) {
    const auto at = [&](const Wave& wave) {
      return wave.amplitude * std::sin(wave.per_x * x + wave.per_y * y + wave.phase);
    };
    moved.x += at(across_.at(i));
    moved.y += at(up_.at(i));
  }
  return moved;
}

}  // namespace benchleaf::scanmaker
