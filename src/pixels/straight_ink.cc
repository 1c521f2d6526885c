#include "pixels/straight_ink.h"

#include "pixels/lanes.h"

#include <vector>

namespace benchleaf {
namespace {

// Ink that has been followed along its lane: from `begin` to before `end`, with `ink` px of it inked. Nothing yet while
// `begin` is -1.
struct Follow {
  int begin = -1;
  int end = 0;
  int ink = 0;

  int length() const { return end - begin; }
  // A short line must be whole: letters that stand over each other align, with gaps between them.
  bool IsWhole() const { return (length() - ink) * 16 <= length(); }
};

void Paint(const Lanes& lines, int lane, const Follow& follow) {
  for (int place = follow.begin; place < follow.end; ++place) lines.Set(lane, place);
}

std::vector<Follow> OneForEachLane(const Lanes& lanes) {
  return std::vector<Follow>(static_cast<std::size_t>(lanes.count()));
}

}  // namespace

PixHandle StraightInk(Pix* ink, const LineRule& rule, bool standing) {
  PixHandle lines(pixCreateTemplate(ink));
  if (!lines) {
    return lines;
  }
  const Lanes from(ink, standing);
  const Lanes to(lines.get(), standing);
  std::vector<Follow> follows = OneForEachLane(from);
  const auto finish = [&](int lane, Follow& follow) {
    const int length = follow.length();
    if (follow.begin >= 0 && (length >= 2 * rule.length_px || (length >= rule.length_px && follow.IsWhole()))) {
      Paint(to, lane, follow);
    }
    follow = {};
  };
  from.ForEachInk([&](int lane, int place) {
    Follow& follow = follows[static_cast<std::size_t>(lane)];
    if (follow.begin < 0 || place - follow.end >= rule.gap_px) {
      finish(lane, follow);
      follow.begin = place;
    }
    follow.end = place + 1;
    ++follow.ink;
  });
  for (int lane = 0; lane < from.count(); ++lane) finish(lane, follows[static_cast<std::size_t>(lane)]);
  return lines;
}

void AddSides(Pix* ink, Pix* others, const LineRule& rule, bool standing, Pix* lines) {
  const PixHandle all(pixOr(nullptr, ink, others));
  if (!all) {
    return;
  }
  const Lanes from(all.get(), standing);
  const Lanes crossing(others, standing);
  const Lanes to(lines, standing);
  std::vector<Follow> follows = OneForEachLane(from);  // since the first line that crosses
  from.ForEachInk([&](int lane, int place) {
    Follow& follow = follows[static_cast<std::size_t>(lane)];
    const bool crossed = crossing.Has(lane, place);
    if (follow.begin >= 0 && place - follow.end < rule.gap_px) {
      follow.end = place + 1;
      ++follow.ink;
      if (crossed && follow.length() > rule.length_px && follow.IsWhole()) {
        Paint(to, lane, follow);
      }
    } else {
      follow = crossed ? Follow{place, place + 1, 1} : Follow{};
    }
  });
}

}  // namespace benchleaf
