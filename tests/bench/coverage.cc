#include "bench/coverage.h"

#include <algorithm>
#include <cmath>

namespace benchleaf::bench {
namespace {

struct Extent {
  double begin = 0;
  double end = 0;

  double length() const { return end - begin; }
};

double Common(const Extent& a, const Extent& b) {
  return std::max(0.0, std::min(a.end, b.end) - std::max(a.begin, b.begin));
}

Extent Along(const Box& box, bool standing) {
  return standing ? Extent{1.0 * box.y, 1.0 * box.bottom()} : Extent{1.0 * box.x, 1.0 * box.right()};
}

Cover CoverBy(const TextPlace& place, const TextString& candidate) {
  constexpr double kLengthHeld = 0.85;
  constexpr double kBreadthHeld = 0.7;
  constexpr double kLongest = 1.3;
  constexpr double kBroadest = 2;
  constexpr double kScrap = 1.0 / 3;
  if (candidate.standing != place.standing) {
    return Cover::kAbsent;
  }
  const Extent text = Along(place.box, place.standing);
  const Extent text_across = Along(place.box, !place.standing);
  const Extent held = Along(candidate.box, place.standing);
  const Extent held_across = Along(candidate.box, !place.standing);
  const double length = Common(text, held) / text.length();
  const double breadth = Common(text_across, held_across) / text_across.length();
  if (length >= kLengthHeld && breadth >= kBreadthHeld) {
    const bool tight =
        held.length() <= kLongest * text.length() && held_across.length() <= kBroadest * text_across.length();
    return tight ? Cover::kFits : Cover::kMerged;
  }
  return length * breadth >= kScrap ? Cover::kCut : Cover::kAbsent;
}

}  // namespace

std::vector<TextPlace> PlacesOnLevelPage(const scanmaker::MadePage& made, const scanmaker::DegradedPage& page,
                                         const PageFrame& frame) {
  const double scale = page.dpi / scanmaker::kMadeDpi * frame.scale;
  std::vector<TextPlace> places;
  for (const scanmaker::MadeTerm& term : made.terms) {
    // Two boxes round slanting boxes have grown, but their middle is still the text's.
    const Box grown = ToLevel(frame, page.Map(term.box));
    const double width = term.box.width * scale;
    const double height = term.box.height * scale;
    const Box box{static_cast<int>(std::lround(grown.center_x() - width / 2)),
                  static_cast<int>(std::lround(grown.center_y() - height / 2)), static_cast<int>(std::lround(width)),
                  static_cast<int>(std::lround(height))};
    places.push_back({term.kind, term.text, box, term.turn % 180 != 0});
  }
  return places;
}

Cover CoverOf(const TextPlace& place, const std::vector<TextString>& candidates) {
  Cover best = Cover::kAbsent;
  for (const TextString& candidate : candidates) best = std::min(best, CoverBy(place, candidate));
  return best;
}

}  // namespace benchleaf::bench
