#include "scan-maker/page_marks.h"

#include "scan-maker/pen_strokes.h"
#include "scan-maker/seeded_random.h"

#include <algorithm>
#include <cmath>

namespace benchleaf::scanmaker {
namespace {

constexpr std::uint8_t kPencil = 115;
constexpr std::uint8_t kInk = 0;
constexpr double kDotPx = 2.6;

// A stroke drawn by hand.
void Draw(GreyImage& image, const Stroke& stroke, SeededRandom& random) {
  const double length = std::hypot(stroke.to_x - stroke.x, stroke.to_y - stroke.y);
  double wobble = 0;
  for (double at = 0; at <= length; at += 1) {
    wobble = std::clamp(wobble + random.Between(-0.3, 0.3), -2.0, 2.0);
    const double share = at / length;
    Dab(image, stroke.x + share * (stroke.to_x - stroke.x), stroke.y + share * (stroke.to_y - stroke.y) + wobble, 1.8,
        kPencil);
  }
}

}  // namespace

MadePage WithPencil(const MadePage& page, std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "pencil"));
  MadePage marked = page;
  for (const MadeTerm& term : page.terms) {
    if (term.kind != "designator" || random.Whole(0, 2) != 0) {
      continue;
    }
    const Box& box = term.box;
    if (random.Whole(0, 1) == 0) {
      const double y = box.bottom() + random.Between(1, 7);
      Draw(marked.image, {box.x - 8.0, y, box.right() + 8.0, y + random.Between(-4, 4)}, random);
    } else {
      const double x = box.x - random.Between(22, 34);
      const double y = box.center_y();
      Draw(marked.image, {x, y, x + 10, y + 14}, random);
      Draw(marked.image, {x + 10, y + 14, x + 30, y - 26}, random);
    }
  }
  return marked;
}

MadePage WithDottedOutlines(const MadePage& page, std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "dots"));
  MadePage dotted = page;
  for (int i = 0; i < 6; ++i) {
    const double left = random.Between(0.05, 0.6) * page.image.width;
    const double top = random.Between(0.05, 0.6) * page.image.height;
    const double right = left + random.Between(0.2, 0.38) * page.image.width;
    const double bottom = top + random.Between(0.15, 0.35) * page.image.height;
    const double step = random.Between(11, 18);
    for (const Stroke& side : {Stroke{left, top, right, top}, Stroke{right, top, right, bottom},
                               Stroke{right, bottom, left, bottom}, Stroke{left, bottom, left, top}}) {
      DrawDabs(dotted.image, side, step, kDotPx, kInk);
    }
  }
  return dotted;
}

}  // namespace benchleaf::scanmaker
