// Single-stroke letters: the Hershey fonts of Debian's hershey-fonts-data.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_STROKE_FONT_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_STROKE_FONT_H_

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

struct StrokePoint {
  double x = 0;  // from the letter's left bound
  double y = 0;  // above the baseline
};

// In units of the capital height.
struct StrokeGlyph {
  double advance = 0;
  std::vector<std::vector<StrokePoint>> strokes;  // each drawn without lifting the pen
};

class StrokeFont {
 public:
  // Reads /usr/share/hershey-fonts/NAME.jhf, which holds ASCII, and Greek letters that stand on schematics (ohm,
  // micro) from greeks.jhf. Throws std::runtime_error when a file is missing or is none.
  static StrokeFont Load(const std::string& name);

  // The glyph of a Unicode code point; nothing drawn, as wide as a space, where the font has none.
  const StrokeGlyph& Glyph(char32_t code) const;

 private:
  std::map<char32_t, StrokeGlyph> glyphs_;
};

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_STROKE_FONT_H_
