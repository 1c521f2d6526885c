#include "benchleaf/pixels/lines.h"

#include "pixels/lanes.h"
#include "pixels/pix.h"
#include "pixels/straight_ink.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

constexpr int kRaggedPx = 5;  // a line with its edges, two px to either side
constexpr int kTouchPx = 2;   // what stands so near to a line touches it

// Whether a lane has ink at `place` or up to `slant` px to its sides.
bool HasInkNear(const Lanes& lanes, int lane, int place, int slant) {
  if (lane < 0 || lane >= lanes.count()) {
    return false;
  }
  const int end = std::min(lanes.length(), place + slant + 1);
  for (int i = std::max(0, place - slant); i < end; ++i) {
    if (lanes.Has(lane, i)) {
      return true;
    }
  }
  return false;
}

// Cuts across lines at most `thickest_px` thick, where `rest` touches them on both sides.
void AppendCrossings(Pix* lines, Pix* rest, int thickest_px, bool standing, std::vector<LineCrossing>& crossings) {
  // What crosses a lying line runs along a column.
  const Lanes cuts(lines, !standing);
  const Lanes letters(rest, standing);
  const auto touched = [&](int beside, int lane, int step) {
    for (int i = 0; i < kTouchPx; ++i) {
      if (HasInkNear(letters, beside + step * i, lane, kTouchPx)) {
        return true;
      }
    }
    return false;
  };
  struct Cut {
    int begin = 0;
    int end = -1;
  };
  std::vector<Cut> open(static_cast<std::size_t>(cuts.count()));
  const auto finish = [&](int lane, const Cut& cut) {
    const int thickness = cut.end - cut.begin;
    if (thickness > 0 && thickness <= thickest_px && touched(cut.begin - 1, lane, -1) && touched(cut.end, lane, 1)) {
      const Box box = standing ? Box{cut.begin, lane, thickness, 1} : Box{lane, cut.begin, 1, thickness};
      crossings.push_back({box, standing});
    }
  };
  cuts.ForEachInk([&](int lane, int place) {
    Cut& cut = open[static_cast<std::size_t>(lane)];
    if (place != cut.end) {
      finish(lane, cut);
      cut.begin = place;
    }
    cut.end = place + 1;
  });
  for (int lane = 0; lane < cuts.count(); ++lane) finish(lane, open[static_cast<std::size_t>(lane)]);
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

LineSplit SplitLines(const InkImage& ink, int length_px, int gap_px, int thickest_px) {
  constexpr double kSide = 0.4;  // of a line's least length
  const LineRule sides{std::max(1, static_cast<int>(kSide * length_px)), kTouchPx + 1};
  const PixHandle pix = ToPix(ink);
  const PixHandle lying = pix ? StraightInk(pix.get(), {length_px, gap_px}, false) : nullptr;
  const PixHandle standing = pix ? StraightInk(pix.get(), {length_px, gap_px}, true) : nullptr;
  const PixHandle lying_long(lying ? pixCopy(nullptr, lying.get()) : nullptr);
  LineSplit split;
  if (!lying || !standing || !lying_long) {
    split.rest = ink;
    return split;
  }
  AddSides(pix.get(), standing.get(), sides, false, lying.get());
  AddSides(pix.get(), lying_long.get(), sides, true, standing.get());
  const PixHandle rest = WithoutLines(pix.get(), lying.get(), standing.get());
  const int all = Count(pix.get());
  split.line_ink = all == 0 ? 0 : 1 - 1.0 * Count(rest.get()) / all;
  split.long_horizontal = CountLonger(lying.get(), std::max(1, ink.width / 12), 0);
  split.long_vertical = CountLonger(standing.get(), 0, std::max(1, ink.height / 12));
  AppendCrossings(lying.get(), rest.get(), thickest_px, false, split.crossings);
  AppendCrossings(standing.get(), rest.get(), thickest_px, true, split.crossings);
  split.rest = ToInk(rest.get());
  return split;
}

}  // namespace benchleaf
