#include "outside/drawing_board.h"

#include <cairo.h>

#include <cmath>
#include <numbers>
#include <sstream>
#include <utility>

namespace benchleaf::outside {
namespace {

// Stroke over capital height, and the distance of lines of text, as drawing practice has them (ISO 3098: 1/10 to 1/14;
// a little more is usual on printed schematics).
constexpr double kStroke = 0.11;
constexpr double kLineDistance = 1.6;

std::pair<Point, double> CircleThrough(Point a, Point b, Point c) {
  const double d = 2 * (a.x * (b.y - c.y) + b.x * (c.y - a.y) + c.x * (a.y - b.y));
  const double aa = a.x * a.x + a.y * a.y;
  const double bb = b.x * b.x + b.y * b.y;
  const double cc = c.x * c.x + c.y * c.y;
  const Point centre{(aa * (b.y - c.y) + bb * (c.y - a.y) + cc * (a.y - b.y)) / d,
                     (aa * (c.x - b.x) + bb * (a.x - c.x) + cc * (b.x - a.x)) / d};
  return {centre, std::hypot(a.x - centre.x, a.y - centre.y)};
}

}  // namespace

DrawingBoard::DrawingBoard(double width_mm, double height_mm, double px_per_mm, scanmaker::Lettering lettering,
                           std::uint64_t seed)
    : sheet_(static_cast<int>(std::lround(width_mm * px_per_mm)), static_cast<int>(std::lround(height_mm * px_per_mm))),
      px_per_mm_(px_per_mm) {
  style_.lettering = lettering;
  style_.seed = seed;
}

void DrawingBoard::Ink(double line_mm, Fill fill) {
  cairo_t* cairo = sheet_.cairo();
  cairo_set_line_width(cairo, line_mm * px_per_mm_);
  if (fill == Fill::kInk) {
    cairo_fill_preserve(cairo);
  }
  cairo_stroke(cairo);
}

void DrawingBoard::Polyline(const std::vector<Point>& points, double line_mm, Fill fill) {
  for (const Point& point : points) cairo_line_to(sheet_.cairo(), point.x * px_per_mm_, point.y * px_per_mm_);
  Ink(line_mm, fill);
}

void DrawingBoard::Circle(Point centre, double radius_mm, double line_mm, Fill fill) {
  cairo_new_sub_path(sheet_.cairo());
  cairo_arc(sheet_.cairo(), centre.x * px_per_mm_, centre.y * px_per_mm_, radius_mm * px_per_mm_, 0,
            2 * std::numbers::pi);
  Ink(line_mm, fill);
}

void DrawingBoard::Arc(Point start, Point middle, Point end, double line_mm, Fill fill) {
  const auto [centre, radius] = CircleThrough(start, middle, end);
  if (!std::isfinite(radius)) {
    Polyline({start, middle, end}, line_mm, fill);
    return;
  }
  const auto angle = [c = centre](Point point) { return std::atan2(point.y - c.y, point.x - c.x); };
  const double turn = (middle.x - start.x) * (end.y - start.y) - (middle.y - start.y) * (end.x - start.x);
  cairo_new_sub_path(sheet_.cairo());
  (turn > 0 ? cairo_arc : cairo_arc_negative)(sheet_.cairo(), centre.x * px_per_mm_, centre.y * px_per_mm_,
                                              radius * px_per_mm_, angle(start), angle(end));
  Ink(line_mm, fill);
}

scanmaker::TextStyle DrawingBoard::Style(double size_mm) const {
  scanmaker::TextStyle style = style_;
  style.cap_height_px = size_mm * px_per_mm_;
  style.stroke_px = kStroke * style.cap_height_px;
  return style;
}

double DrawingBoard::TextWidth(const std::string& text, double size_mm) const {
  return scanmaker::TextAdvance(text, Style(size_mm)) / px_per_mm_;
}

void DrawingBoard::TextLine(Point anchor, const Caption& caption, const std::string& line) {
  ++style_.seed;  // no two texts of a hand are alike
  const scanmaker::TextStyle style = Style(caption.size_mm);
  const double back = caption.alignment.along * scanmaker::TextAdvance(line, style);
  const double down = caption.alignment.up * style.cap_height_px;
  double x = anchor.x * px_per_mm_ + (caption.upward ? down : -back);
  double y = anchor.y * px_per_mm_ + (caption.upward ? back : down);
  for (scanmaker::Token token : scanmaker::TermBook{}.Tokens(line)) {
    token.kind = caption.kind;
    sheet_.Put(x, y, token, style, caption.upward ? 270 : 0);
    (caption.upward ? y : x) += (caption.upward ? -1 : 1) * scanmaker::TextAdvance(token.text + " ", style);
  }
}

void DrawingBoard::Text(Point anchor, const Caption& caption) {
  std::vector<std::string> lines;
  std::istringstream text(caption.text);
  for (std::string line; std::getline(text, line);) lines.push_back(line);
  const double distance = kLineDistance * caption.size_mm;
  // The block as a whole is aligned: a text that stands on its anchor grows upwards.
  double shift = -distance * (1 - caption.alignment.up) * (static_cast<double>(lines.size()) - 1);
  for (const std::string& line : lines) {
    TextLine({anchor.x + (caption.upward ? shift : 0), anchor.y + (caption.upward ? 0 : shift)}, caption, line);
    shift += distance;
  }
}

}  // namespace benchleaf::outside
