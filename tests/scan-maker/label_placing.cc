#include "scan-maker/label_placing.h"

#include <cmath>

namespace benchleaf::scanmaker {
namespace {

Box Block(double x, double y, double width, double height) {
  const int left = static_cast<int>(std::lround(x));
  const int top = static_cast<int>(std::lround(y));
  return {left, top, static_cast<int>(std::ceil(width)), static_cast<int>(std::ceil(height))};
}

double AreaOf(const Box& box) { return static_cast<double>(box.width) * box.height; }

double Cost(const Box& box, const Obstacles& obstacles, double margin) {
  if (box.x < 0 || box.y < 0 || box.right() > obstacles.width || box.bottom() > obstacles.height) {
    return 1e9;
  }
  const Box wide = Grown(box, static_cast<int>(margin), obstacles.width, obstacles.height);
  double cost = 0;
  for (const Box& solid : obstacles.solids) {
    cost += 4 * AreaOf(Intersection(wide, solid));
  }
  // Wires are thin: a little area of theirs is a whole stroke through a letter.
  for (const Box& wire : obstacles.wires) {
    cost += 10 * AreaOf(Intersection(wide, wire));
  }
  return cost;
}

std::vector<Placement> UprightPlaces(const LabelBlock& block) {
  const Box& part = block.part;
  const double width = block.width;
  const double height = block.height;
  std::vector<Placement> places;
  for (const double gap_caps : {0.45, 1.2, 2.4, 4.0}) {
    const double gap = gap_caps * block.cap_height;
    for (const double shift : {0.0, -0.5, 0.5, -1.0, 1.0}) {
      const double side_y = part.center_y() - height / 2 + shift * (part.height + height) / 2;
      const double over_x = part.center_x() - width / 2 + shift * (part.width + width) / 2;
      const Placement right{Block(part.right() + gap, side_y, width, height)};
      const Placement left{Block(part.x - gap - width, side_y, width, height)};
      const Placement above{Block(over_x, part.y - gap - height, width, height)};
      const Placement below{Block(over_x, part.bottom() + gap, width, height)};
      if (block.upright) {
        places.insert(places.end(), {right, left, above, below});
      } else {
        places.insert(places.end(), {above, below, right, left});
      }
    }
  }
  return places;
}

std::vector<Placement> TurnedPlaces(const LabelBlock& block, int first_turn) {
  std::vector<Placement> places;
  if (!block.turnable || !block.upright) {
    return places;
  }
  const double y = block.part.center_y() - block.width / 2;
  for (const double gap_caps : {0.45, 1.2}) {
    const double gap = gap_caps * block.cap_height;
    for (const int turn : {first_turn, 360 - first_turn}) {
      places.push_back({Block(block.part.x - gap - block.height, y, block.height, block.width), turn});
      places.push_back({Block(block.part.right() + gap, y, block.height, block.width), turn});
    }
  }
  return places;
}

}  // namespace

Placement PlaceLabel(const LabelBlock& block, const Obstacles& obstacles, int first_turn) {
  std::vector<Placement> places = first_turn == 0 ? UprightPlaces(block) : TurnedPlaces(block, first_turn);
  const std::vector<Placement> others = first_turn == 0 ? TurnedPlaces(block, 270) : UprightPlaces(block);
  places.insert(places.end(), others.begin(), others.end());
  Placement best = places.front();
  best.cost = 1e12;
  for (Placement& place : places) {
    place.cost = Cost(place.box, obstacles, 0.4 * block.cap_height);
    if (place.cost < best.cost) {
      best = place;
    }
    if (best.cost <= 0) {
      break;
    }
  }
  return best;
}

}  // namespace benchleaf::scanmaker
