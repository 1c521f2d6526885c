#include "scan-maker/page_surroundings.h"

#include "scan-maker/seeded_random.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {
namespace {

constexpr std::uint8_t kLid = 12;
constexpr std::uint8_t kPaper = 255;

void Darken(std::uint8_t& pixel, double share) {
  pixel = static_cast<std::uint8_t>(pixel * std::clamp(share, 0.0, 1.0));
}

template <class Items>
void MoveInto(const Box& frame, Items& items) {
  Items kept;
  for (auto& item : items) {
    const Box inside = Intersection(item.box, frame);
    if (4.0 * inside.width * inside.height >= 1.0 * item.box.width * item.box.height && !inside.empty()) {
      item.box = {inside.x - frame.x, inside.y - frame.y, inside.width, inside.height};
      kept.push_back(std::move(item));
    }
  }
  items = std::move(kept);
}

}  // namespace

MadePage Framed(const MadePage& page, const Box& frame, std::uint8_t fill) {
  MadePage framed = page;
  framed.image = GreyImage(frame.width, frame.height, fill);
  const Box common = Intersection(frame, {0, 0, page.image.width, page.image.height});
  for (int y = common.y; y < common.bottom(); ++y) {
    std::copy_n(page.image.row(y) + common.x, common.width, framed.image.row(y - frame.y) + common.x - frame.x);
  }
  MoveInto(frame, framed.terms);
  MoveInto(frame, framed.entries);
  return framed;
}

MadePage WithPunchHoles(const MadePage& page) {
  // Ring binders' holes are a quarter of an inch wide (ISO 838 has 6 mm) and stand half an inch from the edge.
  constexpr int kRadius = 38;
  constexpr int kFromEdge = 140;
  MadePage holed = page;
  std::vector<Box> lost;
  for (const double place : {0.12, 0.5, 0.88}) {
    const int middle = static_cast<int>(place * page.image.height);
    for (int y = -kRadius - 14; y <= kRadius + 14; ++y) {
      for (int x = -kRadius - 14; x <= kRadius + 14; ++x) {
        const double distance = std::hypot(x, y);
        // The rim throws its shadow to the lower right.
        const double shadow = std::hypot(x - 10, y - 10);
        std::uint8_t& pixel = holed.image.row(middle + y)[kFromEdge + x];
        if (distance <= kRadius) {
          pixel = static_cast<std::uint8_t>(shadow <= kRadius ? 70 : 25);
        } else if (distance <= kRadius + 3) {
          Darken(pixel, 0.7);
        }
      }
    }
    lost.push_back({kFromEdge - kRadius, middle - kRadius, 2 * kRadius, 2 * kRadius});
  }
  const auto is_lost = [&](const auto& item) {
    return std::any_of(lost.begin(), lost.end(),
                       [&](const Box& hole) { return OverlapOfSmaller(hole, item.box) > 0.1; });
  };
  std::erase_if(holed.terms, is_lost);
  return holed;
}

MadePage WithBlackBorder(const MadePage& page, std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "border"));
  const int left = random.Whole(30, 120);
  const int top = random.Whole(30, 120);
  const int right = random.Whole(100, 240);
  const int bottom = random.Whole(60, 200);
  MadePage bordered =
      Framed(page, {-left, -top, page.image.width + left + right, page.image.height + top + bottom}, kLid);
  // The page's own edge wanders by a few pixels, and one corner is turned down.
  const int ear = random.Whole(60, 160);
  for (int y = 0; y < page.image.height; ++y) {
    const int ragged = static_cast<int>(6 + 5 * std::sin(y * 0.01));
    const int corner = std::max(0, ear - y);
    std::uint8_t* row = bordered.image.row(y + top) + left;
    std::fill_n(row, ragged, kLid);
    std::fill_n(row + page.image.width - std::max(ragged, corner), std::max(ragged, corner), kLid);
  }
  return bordered;
}

MadePage WithNeighbour(const MadePage& page, std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "neighbour"));
  const int strip = random.Whole(130, 220);
  const int from = random.Whole(page.image.width / 4, page.image.width / 2);
  MadePage both = Framed(page, {0, 0, page.image.width + strip, page.image.height}, kPaper);
  for (int y = 0; y < page.image.height; ++y) {
    std::copy_n(page.image.row(y) + from, strip, both.image.row(y) + page.image.width);
  }
  return both;
}

MadePage TwoUp(const MadePage& left, const MadePage& right) {
  const int height = std::max(left.image.height, right.image.height);
  MadePage both = Framed(left, {0, 0, left.image.width + right.image.width, height}, kPaper);
  const MadePage moved = Framed(right, {-left.image.width, 0, both.image.width, height}, kPaper);
  for (int y = 0; y < height; ++y) {
    std::copy(moved.image.row(y) + left.image.width, moved.image.row(y) + moved.image.width,
              both.image.row(y) + left.image.width);
  }
  both.terms.insert(both.terms.end(), moved.terms.begin(), moved.terms.end());
  both.entries.insert(both.entries.end(), moved.entries.begin(), moved.entries.end());
  both.printed_number += ", " + moved.printed_number;
  return both;
}

std::pair<MadePage, MadePage> Halves(const MadePage& page, double overlap) {
  const int width = static_cast<int>(page.image.width * (1 + overlap) / 2);
  return {Framed(page, {0, 0, width, page.image.height}, kPaper),
          Framed(page, {page.image.width - width, 0, width, page.image.height}, kPaper)};
}

}  // namespace benchleaf::scanmaker
