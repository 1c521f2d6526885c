#include "clean/callout_rings.h"

#include "benchleaf/clean/components.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <vector>

namespace benchleaf {
namespace {

constexpr double kThickestCaps = 0.4;   // of a ring's stroke
constexpr double kSmallestCaps = 1.15;  // of a ring, inside
constexpr double kTightCaps = 1.4;      // one round a single figure is smaller
constexpr double kLargestCaps = 9;

struct Circle {
  double x = 0;  // of its middle, px
  double y = 0;
  double radius = 0;
};

// How far ink goes outwards from the circle in one direction, px; 0 where none begins near it.
int Thickness(const InkImage& ink, const Circle& circle, double angle, int most) {
  const int near = 3 + static_cast<int>(0.04 * circle.radius);  // for no ring is quite round
  int thickness = 0;
  for (int step = -2; step <= most; ++step) {
    const auto x = static_cast<int>(std::lround(circle.x + (circle.radius + step) * std::cos(angle)));
    const auto y = static_cast<int>(std::lround(circle.y + (circle.radius + step) * std::sin(angle)));
    const bool is_ink = x >= 0 && y >= 0 && x < ink.width && y < ink.height && ink.row(y)[x] != 0;
    if (is_ink) {
      ++thickness;
    } else if (thickness > 0 || step >= near) {
      break;
    }
  }
  return thickness;
}

// The ring of ink round a circle.
struct Drawn {
  int thickness = 0;   // px
  double missing = 0;  // share of the circle without ink
  double uneven = 0;   // share where it is missing, or thicker or thinner than elsewhere
};

Drawn LookAt(const InkImage& ink, const Circle& circle, int most) {
  constexpr int kAngles = 64;
  constexpr int kEvenPx = 2;
  std::vector<int> all;
  all.reserve(kAngles);
  for (int i = 0; i < kAngles; ++i) {
    all.push_back(Thickness(ink, circle, 2 * std::numbers::pi * i / kAngles, most));
  }
  const auto middle = all.begin() + kAngles / 2;
  std::nth_element(all.begin(), middle, all.end());
  const int usual = *middle;
  const auto share = [&](const auto& which) {
    return static_cast<double>(std::count_if(all.begin(), all.end(), which)) / kAngles;
  };
  return {usual, share([](int one) { return one == 0; }),
          share([&](int one) { return std::abs(one - usual) > kEvenPx; })};
}

// The ring about a disc, whose letters may fill it to one edge or to both, so that it seems less wide or high.
Circle RingAbout(const Box& disc, const InkImage& ink, int most) {
  const double radius = std::max(disc.width, disc.height) / 2.0;
  const double slack_x = radius - disc.width / 2.0;
  const double slack_y = radius - disc.height / 2.0;
  Circle best;
  double least = 2;
  for (const double side : {0.0, -1.0, 1.0}) {
    const Circle circle{disc.center_x() - 0.5 + side * slack_x, disc.center_y() - 0.5 + side * slack_y, radius};
    const double uneven = LookAt(ink, circle, most).uneven;
    if (uneven < least) {
      least = uneven;
      best = circle;
    }
  }
  return best;
}

// Rubs the ring round a disc out of `ink`. False when there is none.
bool RubOutRing(const Hole& disc, double cap, InkImage& ink) {
  constexpr double kRound = 0.25;  // how much less wide than high, or the other way round
  constexpr double kTightRound = 0.15;
  constexpr double kLeastClear = 0.3;  // of the disc; the rest is what stands in it
  constexpr double kMostClear = 0.95;
  constexpr double kMostMissing = 0.15;
  constexpr double kMostUneven = 0.35;  // leader and letters touch it
  // So small are the corners that letters part off in the box of a symbol, too, but not as round.
  constexpr double kTightUneven = 0.28;
  const double side = std::max(disc.box.width, disc.box.height);
  const bool tight = side < kTightCaps * cap;
  const double clear = disc.px / (std::numbers::pi / 4 * side * side);
  if (side < kSmallestCaps * cap || side > kLargestCaps * cap ||
      std::abs(disc.box.width - disc.box.height) > (tight ? kTightRound : kRound) * side || clear < kLeastClear ||
      clear > kMostClear) {
    return false;
  }
  const auto most = static_cast<int>(kThickestCaps * cap);
  const Circle ring = RingAbout(disc.box, ink, most);
  const Drawn drawn = LookAt(ink, ring, most);
  if (drawn.missing > kMostMissing || drawn.uneven > (tight ? kTightUneven : kMostUneven) || drawn.thickness >= most) {
    return false;
  }
  const double outer = ring.radius + drawn.thickness + 2;  // for no ring is quite round
  const int reach = static_cast<int>(outer) + 1;
  const Box round = Grown({static_cast<int>(ring.x), static_cast<int>(ring.y), 1, 1}, reach, ink.width, ink.height);
  for (int y = round.y; y < round.bottom(); ++y) {
    for (int x = round.x; x < round.right(); ++x) {
      const double distance = std::hypot(x - ring.x, y - ring.y);
      if (distance >= ring.radius - 1 && distance <= outer) {
        ink.row(y)[x] = 0;
      }
    }
  }
  return true;
}

// Ground that ink closes in.
std::vector<Hole> HolesOfPage(const InkImage& ink, double cap) {
  constexpr double kLeastHoleCaps = 0.4;  // the side of a square of its area
  InkImage ground(ink.width, ink.height);
  for (int y = 0; y < ink.height; ++y) {
    const InkImage::ConstRow row = ink.row(y);
    for (int begin = row.NextGround(0); begin < ink.width;) {
      const int end = row.NextInk(begin);
      ground.row(y).Ink(begin, end);
      begin = row.NextGround(end);
    }
  }
  std::vector<Hole> holes;
  for (const Component& one : FindComponents(ground).items) {
    if (one.ink >= kLeastHoleCaps * cap * kLeastHoleCaps * cap &&
        std::max(one.box.width, one.box.height) <= kLargestCaps * cap) {
      holes.push_back({one.box, one.ink});
    }
  }
  return holes;
}

}  // namespace

std::vector<Box> RubOutRings(double cap_px, InkImage& ink) {
  std::vector<Box> rings;
  const std::vector<Hole> holes = HolesOfPage(ink, cap_px);  // by their topmost row
  for (std::size_t i = 0; i < holes.size(); ++i) {
    if (RubOutRing(holes[i], cap_px, ink)) {
      rings.push_back(holes[i].box);
      continue;
    }
    // Letters that touch a ring on both sides part its inside in two.
    for (std::size_t j = i + 1; j < holes.size() && holes[j].box.y - holes[i].box.y <= kLargestCaps * cap_px; ++j) {
      const Box both = Union(holes[i].box, holes[j].box);
      if (std::max(both.width, both.height) <= kLargestCaps * cap_px &&
          RubOutRing({both, holes[i].px + holes[j].px}, cap_px, ink)) {
        rings.push_back(both);
      }
    }
  }
  return rings;
}

}  // namespace benchleaf
