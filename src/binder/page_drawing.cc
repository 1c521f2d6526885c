#include "binder/page_drawing.h"

#include "binder/addresses.h"

#include <algorithm>
#include <cmath>

namespace benchleaf::binder {
namespace {

// A rectangle in px of the picture.
struct Area {
  double x = 0;
  double y = 0;
  double width = 0;
  double height = 0;
};

std::string Px(double value) { return std::to_string(std::lround(value)); }

// The spot's box, and clear space round it, so that a ring never covers what it points at.
Area RingOf(const Spot& spot, const PagePicture& picture) {
  constexpr double kLeastGap = 4;  // px
  constexpr double kGap = 0.35;    // of the lettering's height
  const double width = spot.box.width * picture.width;
  const double height = spot.box.height * picture.height;
  const double gap = std::max(kLeastGap, kGap * std::min(width, height));
  return {spot.box.x * picture.width - gap, spot.box.y * picture.height - gap, width + 2 * gap, height + 2 * gap};
}

Markup Rect(const Area& area, const std::string& style) {
  return Empty("rect", {{"class", style},
                        {"x", Px(area.x)},
                        {"y", Px(area.y)},
                        {"width", Px(area.width)},
                        {"height", Px(area.height)},
                        {"rx", Px(std::min(area.width, area.height) / 4)}});
}

Markup Picture(const BookPage& page, const PagePicture& picture) {
  return Empty("image", {{"href", PictureFile(page)},
                         {"width", std::to_string(picture.width)},
                         {"height", std::to_string(picture.height)}});
}

// Where a stretch of that length begins so that it lies on the page as far as it can.
double Within(double from, double length, int page) { return std::max(0.0, std::min(from, page - length)); }

std::string ViewBox(const Area& area) {
  return Px(area.x) + ' ' + Px(area.y) + ' ' + Px(area.width) + ' ' + Px(area.height);
}

}  // namespace

Markup WholePage(const BookPage& page, const PagePicture& picture, const std::vector<LinkedSpot>& spots) {
  Markup inside = Picture(page, picture);
  for (const LinkedSpot& linked : spots) {
    const Area ring = RingOf(*linked.spot, picture);
    inside += Tag("a", {{"id", linked.spot->id}, {"class", "spot"}, {"href", linked.to}, {"tabindex", "-1"}},
                  Tag("title", linked.words) + Rect(ring, "ring"));
  }
  // The list beside the page holds the same links for the keyboard and for readers of screens.
  return Tag("svg",
             {{"class", "page"},
              {"viewBox", ViewBox({0, 0, 1.0 * picture.width, 1.0 * picture.height})},
              {"aria-hidden", "true"}},
             inside);
}

Markup RingedCrop(const BookPage& page, const PagePicture& picture, const Spot& spot, const std::string& name) {
  const Area ring = RingOf(spot, picture);
  // Some fourteen letter heights to either side, and twice as wide as high, as a row of a table is.
  constexpr double kLettersAround = 14;
  constexpr double kLeastHalf = 110;  // px
  const double half = std::max(kLeastHalf, kLettersAround * std::min(ring.width, ring.height) / 2);
  const double half_height = std::max(half, ring.height);
  const double half_width = std::max(2 * half, ring.width);
  const double left = Within(ring.x + ring.width / 2 - half_width, 2 * half_width, picture.width);
  const double top = Within(ring.y + ring.height / 2 - half_height, 2 * half_height, picture.height);
  return Tag("svg",
             {{"class", "crop"},
              {"role", "img"},
              {"aria-label", name},
              {"viewBox", ViewBox({left, top, 2 * half_width, 2 * half_height})}},
             Picture(page, picture) + Rect(ring, "ring shown"));
}

}  // namespace benchleaf::binder
