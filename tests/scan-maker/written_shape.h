// How a writer's letters leave their template: each has a shape of the writer's own, and no two are quite alike.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_WRITTEN_SHAPE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_WRITTEN_SHAPE_H_

#include "scan-maker/seeded_random.h"
#include "scan-maker/stroke_font.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace benchleaf::scanmaker {

// Moves the points of one letter. Points are in capital heights, x from the letter's left, y upwards from its baseline.
class WrittenShape {
 public:
  // `looseness` is how far points may move, in capital heights; three quarters of it are the same wherever the writer
  // `seed` writes `letter`, the rest comes from `occurrence`.
  WrittenShape(double looseness, std::uint64_t seed, std::string_view letter, SeededRandom& occurrence);

  StrokePoint At(StrokePoint template_point) const;

 private:
  // Points move along one axis by waves over the letter.
  struct Wave {
    double amplitude;
    double per_x;
    double per_y;
    double phase;
  };
  static Wave WaveOf(double amplitude, SeededRandom& random);

  bool still_;
  double width_ = 1;
  double height_ = 1;
  double slant_ = 0;
  double rise_ = 0;
  std::array<Wave, 4> across_{};
  std::array<Wave, 4> up_{};
};

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_WRITTEN_SHAPE_H_
