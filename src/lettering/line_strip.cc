#include "benchleaf/lettering/line_strip.h"

#include "benchleaf/pixels/operations.h"

#include <algorithm>

namespace benchleaf {

GreyImage StripOf(const GreyImage& line, double cap_px) {
  const GreyImage scaled = Shrunk(line, kStripCapPx / cap_px);
  GreyImage strip(scaled.width, kStripRows);
  const int shift = (kStripRows - scaled.height) / 2;
  for (int y = std::max(0, -shift); y < std::min(scaled.height, kStripRows - shift); ++y) {
    std::copy_n(scaled.row(y), scaled.width, strip.row(y + shift));
  }
  return strip;
}

}  // namespace benchleaf
