#include "benchleaf/clean/clean_page.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <utility>

namespace benchleaf {
namespace {

constexpr double kReaderCapPx = 32;  // the height at which readers do best
constexpr int kBorderPx = 13;
constexpr int kKeepRoundPx = 5;  // of a string's own ink, so that blurred edges stay grey

// Marks the pixels of `area` that lie within kKeepRoundPx of the component's ink.
void MarkNear(const Components& components, const Component& component, const Box& area, InkImage& mask) {
  for (std::size_t i = 0; i < component.run_count; ++i) {
    const Run& run = components.runs[component.first_run + i];
    const int begin = std::max(run.begin - kKeepRoundPx - area.x, 0);
    const int end = std::min(run.end + kKeepRoundPx - area.x, area.width);
    const int top = std::max(run.y - kKeepRoundPx - area.y, 0);
    const int bottom = std::min(run.y + kKeepRoundPx + 1 - area.y, area.height);
    for (int y = top; y < bottom && begin < end; ++y) {
      std::memset(mask.row(y) + begin, 1, static_cast<std::size_t>(end - begin));
    }
  }
}

// Components that are dots, dashes and fragments near the string, which may belong to it.
bool IsSpeck(const Component& component, double cap) {
  return component.box.width < 0.5 * cap && component.box.height < 0.5 * cap && component.ink >= 4;
}

}  // namespace

StringCrop CutString(const CleanPage& page, const TextString& string, int turn) {
  const double cap = page.measures.cap_height_px;
  StringCrop crop;
  crop.turn = turn;
  crop.border = kBorderPx;
  crop.source = Grown(string.box, static_cast<int>(std::lround(0.25 * cap)), page.grey.width, page.grey.height);
  InkImage keep(crop.source.width, crop.source.height);
  for (const std::size_t member : string.members) {
    MarkNear(page.components, page.components.items[member], crop.source, keep);
  }
  // Components stand in the order of their top rows, so those that begin within the crop's rows stand together.
  const std::vector<Component>& all = page.components.items;
  const auto starts_above = [](const Component& component, int y) { return component.box.y < y; };
  const auto begin = std::lower_bound(all.begin(), all.end(), crop.source.y, starts_above);
  const auto end = std::lower_bound(begin, all.end(), crop.source.bottom(), starts_above);
  for (auto speck = begin; speck != end; ++speck) {
    if (IsSpeck(*speck, cap) && !Intersection(speck->box, crop.source).empty()) {
      MarkNear(page.components, *speck, crop.source, keep);
    }
  }
  GreyImage cut = Crop(page.grey, crop.source);
  for (std::size_t i = 0; i < cut.pixels.size(); ++i) {
    if (keep.pixels[i] == 0) {
      cut.pixels[i] = 255;
    }
  }
  // Standing text is turned back upright.
  cut = Turned(cut, (360 - turn) % 360);
  crop.scale = kReaderCapPx / cap;
  const GreyImage scaled = Scaled(cut, crop.scale);
  crop.image = GreyImage(scaled.width + 2 * kBorderPx, scaled.height + 2 * kBorderPx);
  for (int y = 0; y < scaled.height; ++y) {
    std::copy(scaled.row(y), scaled.row(y) + scaled.width, crop.image.row(y + kBorderPx) + kBorderPx);
  }
  return crop;
}

Box ToLevel(const StringCrop& crop, const Box& box) {
  const auto unscaled = [&crop](int px) { return static_cast<int>(std::lround((px - crop.border) / crop.scale)); };
  const int left = unscaled(box.x);
  const int top = unscaled(box.y);
  const int right = unscaled(box.right());
  const int bottom = unscaled(box.bottom());
  Box level;
  switch (crop.turn) {
    case 90:  // the crop's left edge is the top of the source
      level = {crop.source.right() - bottom, crop.source.y + left, bottom - top, right - left};
      break;
    case 270:
      level = {crop.source.x + top, crop.source.bottom() - right, bottom - top, right - left};
      break;
    default:
      level = {crop.source.x + left, crop.source.y + top, right - left, bottom - top};
      break;
  }
  return Intersection(level, crop.source);
}

}  // namespace benchleaf
