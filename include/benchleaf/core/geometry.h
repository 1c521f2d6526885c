// Boxes in the two frames that the program knows, and the one conversion between them.

#ifndef BENCHLEAF_CORE_GEOMETRY_H_
#define BENCHLEAF_CORE_GEOMETRY_H_

namespace benchleaf {

// A box in pixels; origin top left, y down; [x, x + width) by [y, y + height).
struct Box {
  int x = 0;
  int y = 0;
  int width = 0;
  int height = 0;

  int right() const { return x + width; }
  int bottom() const { return y + height; }
  double center_x() const { return x + width / 2.0; }
  double center_y() const { return y + height / 2.0; }
  bool empty() const { return width <= 0 || height <= 0; }

  friend bool operator==(const Box&, const Box&) = default;
};

// The smallest box that holds both; an empty box adds nothing.
Box Union(const Box& a, const Box& b);
// The common part, an empty box at the origin when there is none.
Box Intersection(const Box& a, const Box& b);
// The area of the common part divided by the area of the smaller box: 0 to 1.
double OverlapOfSmaller(const Box& a, const Box& b);
// The box grown by `margin` px on every side and cut to [0, width) x [0, height).
Box Grown(const Box& box, int margin, int width, int height);

// A box as fractions of the page as scanned (as stored in its file, before any turning or deskewing); origin top
// left, y down; every number 0 to 1.
struct FractionBox {
  double x = 0;
  double y = 0;
  double width = 0;
  double height = 0;

  friend bool operator==(const FractionBox&, const FractionBox&) = default;
};

FractionBox Union(const FractionBox& a, const FractionBox& b);
double OverlapOfSmaller(const FractionBox& a, const FractionBox& b);

// How the level page (turned upright, scaled to the working size, deskewed) came from the page as scanned:
//   scanned page -> turned clockwise by `orientation` -> scaled by `scale` -> turned clockwise by `skew_degrees`
//   about the centre, keeping the size -> level page.
// Words are read and grouped in the level page; everything that leaves the program is in fractions of the scan.
struct PageFrame {
  int scan_width = 0;   // px
  int scan_height = 0;  // px
  double dpi = 0;       // of the scan, as far as it is known; 0 when it is not
  int orientation = 0;  // 0, 90, 180 or 270 degrees clockwise that make the scan upright
  double scale = 1;     // level px per scan px
  double skew_degrees = 0;
  int level_width = 0;   // px
  int level_height = 0;  // px

  friend bool operator==(const PageFrame&, const PageFrame&) = default;
};

// The upright rectangle on the scan that holds a box of the level page, cut to the page.
FractionBox ToScan(const PageFrame& frame, const Box& level_box);
// The upright rectangle in the level page that holds a box of the scan, cut to the page.
Box ToLevel(const PageFrame& frame, const FractionBox& scan_box);

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_GEOMETRY_H_
