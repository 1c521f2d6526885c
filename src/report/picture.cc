#include "benchleaf/report/picture.h"

#include "report/color_image.h"
#include "report/mark_label.h"

#include "benchleaf/pixels/image_file.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <utility>

namespace benchleaf {
namespace {

// Half the side of a spot's surroundings, in heights of its lettering: enough to see what a part is connected to.
constexpr double kSurroundingHeights = 22;
// But no less than this share of the page's longer side, for spots whose box is a speck, and no more than this, for
// boxes of several lines.
constexpr double kLeastSurroundings = 0.08;
constexpr double kMostSurroundings = 0.16;
// What lies under the ring stays readable: a ring often crosses the value next to a designator.
constexpr double kBandOpacity = 0.75;
constexpr double kHaloOpacity = 0.5;
// A spot's picture is enlarged until its longer side has this many px, by 4 at most: beyond that it only blurs.
constexpr int kLegibleSide = 900;
constexpr int kMostEnlargement = 4;

double Distance(double x, double y, const Box& box) {
  const double dx = std::max({0.0, box.x - x, x - box.right()});
  const double dy = std::max({0.0, box.y - y, y - box.bottom()});
  return std::hypot(dx, dy);
}

// How much of a pixel whose middle lies `distance` from the box is covered by the band from `inner` to `outer`.
double Coverage(double distance, double inner, double outer) {
  return std::clamp(distance - inner + 0.5, 0.0, 1.0) * std::clamp(outer - distance + 0.5, 0.0, 1.0);
}

// The ring for a box in a picture of that size: clear of the box, and never too fine to be seen.
Ring RingFor(const ColorImage& image, const Box& box, double least_gap_share) {
  const double side = std::max(image.width, image.height);
  return {std::max(0.5 * std::min(box.width, box.height), least_gap_share * side), std::max(2.0, side / 300)};
}

// The part of a page of that size round the spot that is shown.
Box Surroundings(int page_width, int page_height, const Box& spot) {
  const double page_side = std::max(page_width, page_height);
  const double around = std::clamp(kSurroundingHeights * std::min(spot.width, spot.height),
                                   kLeastSurroundings * page_side, kMostSurroundings * page_side);
  const auto cut = [&](double middle, int length, int limit) {
    const double half = std::max(around, length / 2.0 + around / 4);
    const int from = std::max(0, static_cast<int>(middle - half));
    const int to = std::min(limit, static_cast<int>(std::ceil(middle + half)));
    return std::pair(from, to - from);
  };
  const auto [x, width] = cut(spot.center_x(), spot.width, page_width);
  const auto [y, height] = cut(spot.center_y(), spot.height, page_height);
  return {x, y, width, height};
}

// Rings all marks, and sets their labels where no ring and no other label is.
void Ringed(ColorImage& picture, const std::vector<Mark>& marks, int orientation, double least_gap_share) {
  std::vector<Box> taken;
  for (const Mark& mark : marks) {
    const Box box = PixelBox(picture.width, picture.height, Turned(mark.box, orientation));
    const Ring ring = RingFor(picture, box, least_gap_share);
    DrawRing(picture, box, ring);
    taken.push_back(Grown(box, static_cast<int>(ring.gap_px + 2 * ring.width_px), picture.width, picture.height));
  }
  const std::vector<Box> rings = taken;
  for (std::size_t i = 0; i < marks.size(); ++i) {
    if (!marks[i].label.empty()) taken.push_back(DrawMarkLabel(picture, rings[i], marks[i].label, taken));
  }
}

// A box within a part of the page, as fractions of that part.
FractionBox Within(const Box& part, const Box& box) {
  const double width = part.width;
  const double height = part.height;
  return {(box.x - part.x) / width, (box.y - part.y) / height, box.width / width, box.height / height};
}

}  // namespace

void DrawRing(ColorImage& image, const Box& box, const Ring& ring) {
  assert(!box.empty());
  const double halo = ring.width_px / 2;
  const double inner = ring.gap_px + halo;
  const double outer = inner + ring.width_px;
  const int reach = static_cast<int>(std::ceil(outer + halo)) + 1;
  const Box touched = Grown(box, reach, image.width, image.height);
  for (int y = touched.y; y < touched.bottom(); ++y) {
    for (int x = touched.x; x < touched.right(); ++x) {
      const double distance = Distance(x + 0.5, y + 0.5, box);
      // Whatever the gap, the smooth edge must not run into the box.
      if (distance <= 0) continue;
      Blend(Pixel(image, x, y), {255, 255, 255}, kHaloOpacity * Coverage(distance, ring.gap_px, outer + halo));
      Blend(Pixel(image, x, y), kRingColor, kBandOpacity * Coverage(distance, inner, outer));
    }
  }
}

Box PixelBox(int width_px, int height_px, const FractionBox& box) {
  assert(width_px > 0 && height_px > 0);
  // A sum of fractions that misses a pixel's edge by rounding must not take in the next pixel.
  constexpr double kRounding = 1e-6;
  const auto cut = [](double from, double length, int limit) {
    const int first = std::clamp(static_cast<int>(std::floor(from * limit + kRounding)), 0, limit - 1);
    const int last = std::clamp(static_cast<int>(std::ceil((from + length) * limit - kRounding)), first + 1, limit);
    return std::pair(first, last - first);
  };
  const auto [x, width] = cut(box.x, box.width, width_px);
  const auto [y, height] = cut(box.y, box.height, height_px);
  return {x, y, width, height};
}

SpotView ViewOfSpots(int page_width, int page_height, const std::vector<Mark>& marks) {
  assert(!marks.empty());
  SpotView view;
  for (const Mark& mark : marks) {
    view.part = Union(view.part, Surroundings(page_width, page_height, PixelBox(page_width, page_height, mark.box)));
  }
  for (const Mark& mark : marks) {
    view.marks.push_back({Within(view.part, PixelBox(page_width, page_height, mark.box)), mark.label});
  }
  return view;
}

ColorImage RingedSpots(const ColorImage& part, const std::vector<Mark>& marks, int orientation, int side_px) {
  ColorImage picture = Turned(part, orientation);
  const int side = std::max(picture.width, picture.height);
  const int wanted = side_px > 0 ? side_px : kLegibleSide;
  picture = Enlarged(picture, std::clamp((wanted + side - 1) / side, 1, kMostEnlargement));
  if (side_px > 0) picture = ScaledToFit(picture, side_px);
  Ringed(picture, marks, orientation, 0.004);
  return picture;
}

ColorImage RingedPage(const ColorImage& page, const std::vector<Mark>& marks, int orientation, int max_side_px) {
  ColorImage picture = UprightPage(page, orientation, max_side_px);
  Ringed(picture, marks, orientation, 0.012);
  return picture;
}

ColorImage RingedThumb(const ColorImage& part, const FractionBox& spot, int orientation, int max_width_px,
                       int max_height_px) {
  ColorImage picture = Turned(part, orientation);
  // The side that fits in width and in height.
  const double scale = std::min(1.0 * max_width_px / picture.width, 1.0 * max_height_px / picture.height);
  const int side = std::max(1, static_cast<int>(scale * std::max(picture.width, picture.height)));
  picture = Enlarged(picture, std::clamp(static_cast<int>(std::ceil(scale)), 1, kMostEnlargement));
  picture = ScaledToFit(picture, side);
  Ringed(picture, {{spot, ""}}, orientation, 0.01);
  return picture;
}

ColorImage UprightPage(const ColorImage& page, int orientation, int max_side_px) {
  return Turned(ScaledToFit(page, max_side_px), orientation);
}

}  // namespace benchleaf
