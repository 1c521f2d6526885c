// A sheet measured in millimetres, with text set by anchor and alignment, as drawing programs do it.

#ifndef BENCHLEAF_TESTS_OUTSIDE_DRAWING_BOARD_H_
#define BENCHLEAF_TESTS_OUTSIDE_DRAWING_BOARD_H_

#include "scan-maker/lettering.h"
#include "scan-maker/sheet.h"

#include "benchleaf/core/geometry.h"

#include <cstdint>
#include <string>
#include <vector>

namespace benchleaf::outside {

// mm, y down.
struct Point {
  double x = 0;
  double y = 0;
};

// Where the anchor lies in the text: 0 at its left end or baseline, 1 at its right end or the capitals' top.
struct Alignment {
  double along = 0.5;
  double up = 0.5;
};

enum class Fill { kNone, kInk };

struct Caption {
  std::string kind;  // as in scanmaker::TruthTerm
  std::string text;  // may have several lines
  double size_mm = 1.27;
  Alignment alignment = {};
  bool upward = false;  // turned to read from bottom to top
};

class DrawingBoard {
 public:
  DrawingBoard(double width_mm, double height_mm, double px_per_mm, scanmaker::Lettering lettering, std::uint64_t seed);

  void Polyline(const std::vector<Point>& points, double line_mm, Fill fill = Fill::kNone);
  void Circle(Point centre, double radius_mm, double line_mm, Fill fill = Fill::kNone);
  // The arc from `start` over `middle` to `end`.
  void Arc(Point start, Point middle, Point end, double line_mm, Fill fill = Fill::kNone);
  void Text(Point anchor, const Caption& caption);

  double TextWidth(const std::string& text, double size_mm) const;

  scanmaker::MadePage Take() { return sheet_.Take("schematic", ""); }

 private:
  scanmaker::TextStyle Style(double size_mm) const;
  void TextLine(Point anchor, const Caption& caption, const std::string& line);
  void Ink(double line_mm, Fill fill);

  scanmaker::Sheet sheet_;
  double px_per_mm_;
  scanmaker::TextStyle style_;
};

}  // namespace benchleaf::outside

#endif  // BENCHLEAF_TESTS_OUTSIDE_DRAWING_BOARD_H_
