// Makes a clean drawing look as if it had been printed, aged and scanned.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_DEGRADE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_DEGRADE_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/image.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace benchleaf::scanmaker {

enum class Grade {
  kClean,   // as drawn, 300 dpi
  kMild,    // 300 dpi, slight blur, 0.5 degrees of skew
  kMedium,  // 200 dpi, ink spread, speckle, uneven ground, JPEG quality 50, 1 degree
  kSevere,  // 150 dpi, 1 bit with dropouts, speckle, a fold line, 1.5 degrees
  kVaried,  // 110 to 300 dpi, each fault as the seed says, from none to a little beyond severe: for a reader to learn
            // from
};

std::string_view Name(Grade grade);

struct DegradedPage {
  GreyImage image;
  double dpi = 300;
  // scan x = xx * x + xy * y + x0, scan y = yx * x + yy * y + y0, from px of the clean page to px of `image`.
  double xx = 1, xy = 0, x0 = 0;
  double yx = 0, yy = 1, y0 = 0;

  // The box on the degraded page that holds a box of the clean page, as fractions.
  FractionBox Map(const Box& clean_box) const;
};

// What may be otherwise than the grade has it.
struct ScanChanges {
  std::optional<double> skew_degrees = std::nullopt;  // to the side that the seed says
  std::optional<double> dpi = std::nullopt;
  std::optional<int> jpeg_quality = std::nullopt;  // 1 to 100
  bool thin_print = false;                         // too little ink on the printer's plate: thin strokes with breaks
};

// `clean` is taken to be at 300 dpi. Same image, grade, seed and changes: same bytes, on every machine. A clean page
// knows no changes.
DegradedPage Degrade(const GreyImage& clean, Grade grade, std::uint64_t seed, const ScanChanges& changes = {});

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_DEGRADE_H_
