#include "benchleaf/pixels/lines.h"

#include "pixels/pix.h"

#include <algorithm>

namespace benchleaf {
namespace {

constexpr int kRaggedPx = 5;  // a line with its edges, two px to either side

PixHandle LinesAlong(Pix* ink, int length_px, int gap_px, bool horizontal) {
  const PixHandle closed(horizontal ? pixCloseSafeBrick(nullptr, ink, gap_px, 1)
                                    : pixCloseSafeBrick(nullptr, ink, 1, gap_px));
  return PixHandle(!closed      ? nullptr
                   : horizontal ? pixOpenBrick(nullptr, closed.get(), length_px, 1)
                                : pixOpenBrick(nullptr, closed.get(), 1, length_px));
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

}  // namespace

LineSplit SplitLines(const InkImage& ink, int length_px, int gap_px, int repair_px) {
  LineSplit split;
  const PixHandle pix = ToPix(ink);
  const PixHandle horizontal = pix ? LinesAlong(pix.get(), length_px, gap_px, true) : nullptr;
  const PixHandle vertical = pix ? LinesAlong(pix.get(), length_px, gap_px, false) : nullptr;
  if (!horizontal || !vertical) {
    split.rest = ink;
    return split;
  }
  PixHandle without(pixSubtract(nullptr, pix.get(), horizontal.get()));
  pixSubtract(without.get(), without.get(), vertical.get());
  // A scanned line's edges are ragged. What only lies along a line goes with it, or letters near it would be tied to
  // it; what reaches beyond is a letter's.
  const PixHandle band(pixDilateBrick(nullptr, horizontal.get(), 1, kRaggedPx));
  const PixHandle standing_band(pixDilateBrick(nullptr, vertical.get(), kRaggedPx, 1));
  pixOr(band.get(), band.get(), standing_band.get());
  const PixHandle beyond(pixSubtract(nullptr, without.get(), band.get()));
  without.reset(pixSeedfillBinary(nullptr, beyond.get(), without.get(), 8));
  if (!without) {
    split.rest = ink;
    return split;
  }
  // Across a lying line letters close from above to below it; across a standing one from left to right.
  PixHandle repaired(pixCloseSafeBrick(nullptr, without.get(), 1, repair_px));
  pixAnd(repaired.get(), repaired.get(), horizontal.get());
  const PixHandle sideways(pixCloseSafeBrick(nullptr, without.get(), repair_px, 1));
  pixAnd(sideways.get(), sideways.get(), vertical.get());
  pixOr(repaired.get(), repaired.get(), sideways.get());
  pixAnd(repaired.get(), repaired.get(), pix.get());
  const int all = Count(pix.get());
  split.line_ink = all == 0 ? 0 : 1 - 1.0 * Count(without.get()) / all;
  split.long_horizontal = CountLonger(horizontal.get(), std::max(1, ink.width / 12), 0);
  split.long_vertical = CountLonger(vertical.get(), 0, std::max(1, ink.height / 12));
  pixOr(repaired.get(), repaired.get(), without.get());
  split.rest = ToInk(repaired.get());
  return split;
}

}  // namespace benchleaf
