#include "benchleaf/core/geometry.h"

#include "benchleaf/core/scan_points.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace benchleaf {
namespace {

struct Point {
  double x = 0;
  double y = 0;
};

// The size of the page after turning and scaling, before deskewing; deskewing keeps it.
struct TurnedSize {
  double width = 0;
  double height = 0;
};

TurnedSize SizeOfTurned(const PageFrame& frame) {
  const bool sideways = frame.orientation % 180 != 0;
  return {sideways ? frame.scan_height : frame.scan_width * 1.0, sideways ? frame.scan_width : frame.scan_height * 1.0};
}

Point Rotated(Point p, Point center, double degrees_clockwise) {
  const double radians = degrees_clockwise * std::numbers::pi / 180;
  const double dx = p.x - center.x;
  const double dy = p.y - center.y;
  // y points down, so this turns clockwise as seen on the page.
  return {center.x + dx * std::cos(radians) - dy * std::sin(radians),
          center.y + dx * std::sin(radians) + dy * std::cos(radians)};
}

Point LevelToScan(const PageFrame& frame, Point p) {
  const Point center{frame.level_width / 2.0, frame.level_height / 2.0};
  p = Rotated(p, center, -frame.skew_degrees);
  p.x /= frame.scale;
  p.y /= frame.scale;
  switch (frame.orientation) {
    case 90:  // the scan's left edge became the top
      return {p.y, frame.scan_height - p.x};
    case 180:
      return {frame.scan_width - p.x, frame.scan_height - p.y};
    case 270:
      return {frame.scan_width - p.y, p.x};
    default:
      return p;
  }
}

Point ScanToLevel(const PageFrame& frame, Point p) {
  const TurnedSize size = SizeOfTurned(frame);
  Point turned = p;
  switch (frame.orientation) {
    case 90:
      turned = {size.width - p.y, p.x};
      break;
    case 180:
      turned = {size.width - p.x, size.height - p.y};
      break;
    case 270:
      turned = {p.y, size.height - p.x};
      break;
    default:
      break;
  }
  const Point scaled{turned.x * frame.scale, turned.y * frame.scale};
  return Rotated(scaled, {frame.level_width / 2.0, frame.level_height / 2.0}, frame.skew_degrees);
}

struct Extent {
  double left = 0;
  double top = 0;
  double right = 0;
  double bottom = 0;
};

Extent ExtentOf(const std::array<Point, 4>& corners) {
  const auto [left, right] =
      std::minmax_element(corners.begin(), corners.end(), [](Point a, Point b) { return a.x < b.x; });
  const auto [top, bottom] =
      std::minmax_element(corners.begin(), corners.end(), [](Point a, Point b) { return a.y < b.y; });
  return {left->x, top->y, right->x, bottom->y};
}

}  // namespace

Box Union(const Box& a, const Box& b) {
  if (a.empty()) {
    return b;
  }
  if (b.empty()) {
    return a;
  }
  const int x = std::min(a.x, b.x);
  const int y = std::min(a.y, b.y);
  return {x, y, std::max(a.right(), b.right()) - x, std::max(a.bottom(), b.bottom()) - y};
}

Box Intersection(const Box& a, const Box& b) {
  const int x = std::max(a.x, b.x);
  const int y = std::max(a.y, b.y);
  const int right = std::min(a.right(), b.right());
  const int bottom = std::min(a.bottom(), b.bottom());
  return right <= x || bottom <= y ? Box{} : Box{x, y, right - x, bottom - y};
}

double OverlapOfSmaller(const Box& a, const Box& b) {
  const Box common = Intersection(a, b);
  if (common.empty()) {
    return 0;
  }
  const double smaller = std::min(1.0 * a.width * a.height, 1.0 * b.width * b.height);
  return 1.0 * common.width * common.height / smaller;
}

Box Grown(const Box& box, int margin, int width, int height) {
  const Box grown{box.x - margin, box.y - margin, box.width + 2 * margin, box.height + 2 * margin};
  return Intersection(grown, {0, 0, width, height});
}

FractionBox Union(const FractionBox& a, const FractionBox& b) {
  if (a.width <= 0 || a.height <= 0) {
    return b;
  }
  if (b.width <= 0 || b.height <= 0) {
    return a;
  }
  const double x = std::min(a.x, b.x);
  const double y = std::min(a.y, b.y);
  return {x, y, std::max(a.x + a.width, b.x + b.width) - x, std::max(a.y + a.height, b.y + b.height) - y};
}

double OverlapOfSmaller(const FractionBox& a, const FractionBox& b) {
  const double width = std::min(a.x + a.width, b.x + b.width) - std::max(a.x, b.x);
  const double height = std::min(a.y + a.height, b.y + b.height) - std::max(a.y, b.y);
  const double smaller = std::min(a.width * a.height, b.width * b.height);
  return width <= 0 || height <= 0 || smaller <= 0 ? 0 : width * height / smaller;
}

FractionBox ToScan(const PageFrame& frame, const Box& level_box) {
  const double left = level_box.x;
  const double top = level_box.y;
  const double right = level_box.right();
  const double bottom = level_box.bottom();
  std::array<Point, 4> corners = {Point{left, top}, Point{right, top}, Point{left, bottom}, Point{right, bottom}};
  for (Point& corner : corners) {
    corner = LevelToScan(frame, corner);
  }
  const Extent extent = ExtentOf(corners);
  const double x = std::clamp(extent.left / frame.scan_width, 0.0, 1.0);
  const double y = std::clamp(extent.top / frame.scan_height, 0.0, 1.0);
  return {x, y, std::clamp(extent.right / frame.scan_width, 0.0, 1.0) - x,
          std::clamp(extent.bottom / frame.scan_height, 0.0, 1.0) - y};
}

FractionPoint PointOnScan(const PageFrame& frame, double level_x, double level_y) {
  const Point p = LevelToScan(frame, {level_x, level_y});
  return {p.x / frame.scan_width, p.y / frame.scan_height};
}

Box ToLevel(const PageFrame& frame, const FractionBox& scan_box) {
  const double left = scan_box.x * frame.scan_width;
  const double top = scan_box.y * frame.scan_height;
  const double right = (scan_box.x + scan_box.width) * frame.scan_width;
  const double bottom = (scan_box.y + scan_box.height) * frame.scan_height;
  std::array<Point, 4> corners = {Point{left, top}, Point{right, top}, Point{left, bottom}, Point{right, bottom}};
  for (Point& corner : corners) {
    corner = ScanToLevel(frame, corner);
  }
  const Extent extent = ExtentOf(corners);
  const int x = static_cast<int>(std::lround(extent.left));
  const int y = static_cast<int>(std::lround(extent.top));
  const Box box{x, y, static_cast<int>(std::lround(extent.right)) - x,
                static_cast<int>(std::lround(extent.bottom)) - y};
  return Intersection(box, {0, 0, frame.level_width, frame.level_height});
}

}  // namespace benchleaf
