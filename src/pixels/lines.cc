#include "benchleaf/pixels/lines.h"

#include "pixels/pix.h"

#include <allheaders.h>

#include <algorithm>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

constexpr int kRaggedPx = 5;  // a line with its edges, two px to either side
constexpr int kTouchPx = 2;   // what stands so near to a line touches it

// A picture seen along its rows or along its columns, so that lying and standing lines are one case: `along` runs with
// the line, `across` from one such row to the next.
template <class Image, class Pixel>
class Lanes {
 public:
  Lanes(Image& image, bool standing) : image_(image), standing_(standing) {}

  int length() const { return standing_ ? image_.height : image_.width; }
  int count() const { return standing_ ? image_.width : image_.height; }
  Pixel& at(int across, int along) const { return standing_ ? image_.row(along)[across] : image_.row(across)[along]; }

 private:
  Image& image_;
  bool standing_;
};

using InkLanes = Lanes<const InkImage, const std::uint8_t>;
using MaskLanes = Lanes<InkImage, std::uint8_t>;

// A line that has been followed along its lane: from `begin` to before `end`, with `ink` px of it inked.
struct Follow {
  int begin = -1;
  int end = 0;
  int ink = 0;
};

// A short line must be whole: letters that stand over each other align, with gaps between them.
bool IsWhole(const Follow& follow) {
  return (follow.end - follow.begin - follow.ink) * 16 <= follow.end - follow.begin;
}

struct LineRule {
  int length_px;
  int gap_px;

  bool IsLine(const Follow& follow) const {
    const int length = follow.end - follow.begin;
    return length >= 2 * length_px || (length >= length_px && IsWhole(follow));
  }
};

InkImage LinesAlong(const InkImage& ink, const LineRule& rule, bool standing) {
  InkImage lines(ink.width, ink.height);
  const InkLanes from(ink, standing);
  const MaskLanes to(lines, standing);
  // The page is gone through row by row, whatever the direction, for that is how it lies in memory.
  std::vector<Follow> follows(static_cast<std::size_t>(from.count()));
  const auto finish = [&](int across, Follow& follow) {
    if (follow.begin >= 0 && rule.IsLine(follow)) {
      for (int along = follow.begin; along < follow.end; ++along) to.at(across, along) = 1;
    }
    follow = {};
  };
  const auto visit = [&](int across, int along) {
    if (from.at(across, along) == 0) {
      return;
    }
    Follow& follow = follows[static_cast<std::size_t>(across)];
    if (follow.begin < 0 || along - follow.end >= rule.gap_px) {
      finish(across, follow);
      follow.begin = along;
    }
    follow.end = along + 1;
    ++follow.ink;
  };
  for (int y = 0; y < ink.height; ++y) {
    for (int x = 0; x < ink.width; ++x) standing ? visit(x, y) : visit(y, x);
  }
  for (int across = 0; across < from.count(); ++across) finish(across, follows[static_cast<std::size_t>(across)]);
  return lines;
}

// Adds to `lines` straight ink of at least `length_px` between two of the `others`, lines that cross it, with gaps of
// less than `gap_px`: the sides of a box between its top and its foot.
void AddSides(const InkImage& ink, const InkImage& others, const LineRule& rule, bool standing, InkImage& lines) {
  const InkLanes from(ink, standing);
  const InkLanes crossing(others, standing);
  const MaskLanes to(lines, standing);
  // What has been followed since the first line that crosses it; begins at -1 while there is none.
  std::vector<Follow> follows(static_cast<std::size_t>(from.count()));
  const auto visit = [&](int across, int along) {
    Follow& follow = follows[static_cast<std::size_t>(across)];
    const bool crossed = crossing.at(across, along) != 0;
    if (!crossed && from.at(across, along) == 0) {
      if (along - follow.end >= rule.gap_px) {
        follow = {};
      }
      return;
    }
    if (follow.begin >= 0) {
      follow.end = along + 1;
      ++follow.ink;
    }
    if (!crossed) {
      return;
    }
    if (follow.begin < 0) {
      follow = {along, along + 1, 1};
    } else if (along - follow.begin >= rule.length_px && IsWhole(follow)) {
      for (int i = follow.begin; i < along; ++i) to.at(across, i) = 1;
    }
  };
  for (int y = 0; y < ink.height; ++y) {
    for (int x = 0; x < ink.width; ++x) standing ? visit(x, y) : visit(y, x);
  }
}

// Whether a picture has ink in a lane, at `along` or up to `slant` px to its sides.
bool HasInk(const InkLanes& lanes, int across, int along, int slant) {
  if (across < 0 || across >= lanes.count()) {
    return false;
  }
  const int end = std::min(lanes.length(), along + slant + 1);
  for (int i = std::max(0, along - slant); i < end; ++i) {
    if (lanes.at(across, i) != 0) {
      return true;
    }
  }
  return false;
}

// Puts back the ink of `lines` over which a stroke of `rest` runs on from one side to the other: the line is at most
// `thickest_px` thick there, and the stroke touches it on both sides.
void MendCrossings(const InkImage& ink, const InkImage& lines, int thickest_px, bool standing, const InkImage& rest,
                   InkImage& mended) {
  // The line's lanes are its columns here: what crosses a lying line runs along a column.
  const InkLanes line(lines, !standing);
  const InkLanes inked(ink, !standing);
  const InkLanes letters(rest, standing);
  const MaskLanes to(mended, !standing);
  const auto touched = [&](int at, int lane, int step) {
    for (int i = 1; i <= kTouchPx; ++i) {
      if (HasInk(letters, at + step * i, lane, kTouchPx)) {
        return true;
      }
    }
    return false;
  };
  struct Crossing {
    int lane;
    int begin;
    int end;
  };
  std::vector<int> begins(static_cast<std::size_t>(line.count()), -1);
  std::vector<Crossing> crossings;
  const auto visit = [&](int lane, int at) {
    int& begin = begins[static_cast<std::size_t>(lane)];
    const bool on_line = line.at(lane, at) != 0;
    if (on_line && begin < 0) {
      begin = at;
    } else if (!on_line && begin >= 0) {
      if (at - begin <= thickest_px && touched(begin, lane, -1) && touched(at - 1, lane, 1)) {
        crossings.push_back({lane, begin, at});
      }
      begin = -1;
    }
  };
  for (int y = 0; y < lines.height; ++y) {
    for (int x = 0; x < lines.width; ++x) standing ? visit(y, x) : visit(x, y);
  }
  for (const Crossing& crossing : crossings) {
    for (int at = crossing.begin; at < crossing.end; ++at) {
      if (inked.at(crossing.lane, at) != 0) {
        to.at(crossing.lane, at) = 1;
      }
    }
  }
}

int CountLonger(Pix* lines, int width_px, int height_px) {
  Boxa* boxes = pixConnCompBB(lines, 8);
  int count = 0;
  for (int i = 0; boxes != nullptr && i < boxaGetCount(boxes); ++i) {
    l_int32 width = 0;
    l_int32 height = 0;
    boxaGetBoxGeometry(boxes, i, nullptr, nullptr, &width, &height);
    count += width >= width_px && height >= height_px ? 1 : 0;
  }
  boxaDestroy(&boxes);
  return count;
}

l_int32 Count(Pix* pix) {
  l_int32 count = 0;
  pixCountPixels(pix, &count, nullptr);
  return count;
}

// A scanned line's edges are ragged. What only lies along a line goes with it, or it would tie letters together; what
// reaches beyond is a letter's, and keeps its foot on the line.
PixHandle WithoutLines(Pix* ink, Pix* lying, Pix* standing) {
  PixHandle without(pixSubtract(nullptr, ink, lying));
  pixSubtract(without.get(), without.get(), standing);
  const PixHandle band(pixDilateBrick(nullptr, lying, 1, kRaggedPx));
  const PixHandle standing_band(pixDilateBrick(nullptr, standing, kRaggedPx, 1));
  pixOr(band.get(), band.get(), standing_band.get());
  const PixHandle beyond(pixSubtract(nullptr, without.get(), band.get()));
  const PixHandle reach(pixDilateBrick(nullptr, beyond.get(), kRaggedPx, kRaggedPx));
  pixAnd(without.get(), without.get(), reach.get());
  return without;
}

}  // namespace

LineSplit SplitLines(const InkImage& ink, int length_px, int gap_px, int repair_px) {
  constexpr double kSide = 0.4;  // of a line's least length
  const LineRule sides{std::max(1, static_cast<int>(kSide * length_px)), kTouchPx + 1};
  LineSplit split;
  split.rest = ink;
  InkImage lying = LinesAlong(ink, {length_px, gap_px}, false);
  InkImage standing = LinesAlong(ink, {length_px, gap_px}, true);
  const InkImage lying_long = lying;
  AddSides(ink, standing, sides, false, lying);
  AddSides(ink, lying_long, sides, true, standing);
  const PixHandle pix = ToPix(ink);
  const PixHandle lying_pix = ToPix(lying);
  const PixHandle standing_pix = ToPix(standing);
  const PixHandle without =
      pix && lying_pix && standing_pix ? WithoutLines(pix.get(), lying_pix.get(), standing_pix.get()) : nullptr;
  if (!without) {
    return split;
  }
  const int all = Count(pix.get());
  split.line_ink = all == 0 ? 0 : 1 - 1.0 * Count(without.get()) / all;
  split.long_horizontal = CountLonger(lying_pix.get(), std::max(1, ink.width / 12), 0);
  split.long_vertical = CountLonger(standing_pix.get(), 0, std::max(1, ink.height / 12));
  const InkImage letters = ToInk(without.get());
  split.rest = letters;
  MendCrossings(ink, lying, repair_px, false, letters, split.rest);
  MendCrossings(ink, standing, repair_px, true, letters, split.rest);
  return split;
}

}  // namespace benchleaf
