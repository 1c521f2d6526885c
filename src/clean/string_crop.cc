#include "benchleaf/clean/clean_page.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

constexpr int kBorderPx = 13;
constexpr int kOwnRoundPx = 1;   // of a string's own ink, which is the string's whatever lies there
constexpr int kKeepRoundPx = 5;  // of a string's own ink, so that blurred edges stay grey

// Marks the pixels of `area` that lie within `round_px` of the component's ink.
void MarkNear(const Components& components, const Component& component, const Box& area, int round_px, InkImage& mask) {
  for (std::size_t i = 0; i < component.run_count; ++i) {
    const Run& run = components.runs[component.first_run + i];
    const int begin = std::max(run.begin - round_px - area.x, 0);
    const int end = std::min(run.end + round_px - area.x, area.width);
    const int top = std::max(run.y - round_px - area.y, 0);
    const int bottom = std::min(run.y + round_px + 1 - area.y, area.height);
    for (int y = top; y < bottom && begin < end; ++y) {
      mask.row(y).Ink(begin, end);
    }
  }
}

// Whether a pixel of the level page lies on ink or beside it.
bool TouchesInk(const InkImage& ink, int x, int y) {
  for (int row = std::max(0, y - 1); row <= std::min(ink.height - 1, y + 1); ++row) {
    for (int column = std::max(0, x - 1); column <= std::min(ink.width - 1, x + 1); ++column) {
      if (ink.row(row)[column] != 0) {
        return true;
      }
    }
  }
  return false;
}

// The capital height of the string's own lettering, px: drawings mix sizes. The height of the third-tallest quarter,
// for small letters, dots and a letter that touches something must not tell it.
double OwnCap(const CleanPage& page, const TextString& string) {
  const double page_cap = page.measures.cap_height_px;
  double cap = string.breadth();
  if (!string.broken && string.members.size() > 1) {
    std::vector<int> heights;
    for (const std::size_t member : string.members) {
      const Box& box = page.components.items[member].box;
      heights.push_back(string.standing ? box.width : box.height);
    }
    const auto high = heights.begin() + static_cast<std::ptrdiff_t>(heights.size() * 3 / 4);
    std::nth_element(heights.begin(), high, heights.end());
    cap = *high;
  }
  return std::clamp(cap, 0.5 * page_cap, 1.7 * page_cap);
}

// Components that are dots, dashes and fragments near the string, which may belong to it.
bool IsSpeck(const Component& component, double cap) {
  return component.box.width < 0.5 * cap && component.box.height < 0.5 * cap && component.ink >= 4;
}

// Pages that were enlarged more than so have strokes of one pixel or two of the scan, which enlarging blurs.
constexpr double kCoarseFrom = 2;

// Takes back some of the blur: half of what a pixel differs from its neighbourhood is added to it. At 75 dpi drawings
// and locators read .58 of their designators for .54 (bench_traits --trait jpeg-75).
void Sharpen(GreyImage& crop) {
  constexpr int kRadius = 3;
  const GreyImage soft = Blurred(GreyImage(crop), kRadius);
  for (std::size_t i = 0; i < crop.pixels.size(); ++i) {
    const int level = crop.pixels[i] + (crop.pixels[i] - soft.pixels[i]) / 2;
    crop.pixels[i] = static_cast<std::uint8_t>(std::clamp(level, 0, 255));
  }
}

// Makes the string's darkest ink black and what is half-way to it darker still: blurred thin strokes read better so.
void StretchContrast(GreyImage& crop) {
  constexpr double kGain = 1.4;
  if (crop.empty()) {
    return;
  }
  const int darkest = *std::min_element(crop.pixels.begin(), crop.pixels.end());
  const double gain = kGain * 255 / std::max(1, 255 - darkest);
  for (std::uint8_t& pixel : crop.pixels) {
    pixel = static_cast<std::uint8_t>(std::clamp(255 - (255 - pixel) * gain, 0.0, 255.0));
  }
}

}  // namespace

StringCrop CutString(const CleanPage& page, const TextString& string, int turn, double cap_px) {
  const double page_cap = page.measures.cap_height_px;
  const double cap = OwnCap(page, string);
  StringCrop crop;
  crop.turn = turn;
  crop.border = kBorderPx;
  crop.source = Grown(string.box, static_cast<int>(std::lround(0.25 * cap)), page.grey.width, page.grey.height);
  InkImage own(crop.source.width, crop.source.height);
  InkImage keep(crop.source.width, crop.source.height);
  const auto mark = [&](const Component& component) {
    MarkNear(page.components, component, crop.source, kOwnRoundPx, own);
    MarkNear(page.components, component, crop.source, kKeepRoundPx, keep);
  };
  for (const std::size_t member : string.members) {
    mark(page.components.items[member]);
  }
  // Components stand in the order of their top rows, so those that begin within the crop's rows stand together.
  const std::vector<Component>& all = page.components.items;
  const auto starts_above = [](const Component& component, int y) { return component.box.y < y; };
  const auto begin = std::lower_bound(all.begin(), all.end(), crop.source.y, starts_above);
  const auto end = std::lower_bound(begin, all.end(), crop.source.bottom(), starts_above);
  for (auto speck = begin; speck != end; ++speck) {
    if (IsSpeck(*speck, page_cap) && !Intersection(speck->box, crop.source).empty()) {
      mark(*speck);
    }
  }
  GreyImage cut = Crop(page.grey, crop.source);
  for (int y = 0; y < cut.height && page.steps.own_ink; ++y) {
    for (int x = 0; x < cut.width; ++x) {
      if (own.row(y)[x] == 0 && (keep.row(y)[x] == 0 || TouchesInk(page.ink, crop.source.x + x, crop.source.y + y))) {
        cut.row(y)[x] = 255;
      }
    }
  }
  if (page.frame.scale > kCoarseFrom) {
    Sharpen(cut);
  }
  if (page.steps.contrast) {
    StretchContrast(cut);
  }
  // Standing text is turned back upright.
  cut = Turned(std::move(cut), (360 - turn) % 360);
  crop.scale = cap_px / cap;
  const GreyImage scaled = Scaled(std::move(cut), crop.scale);
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
    case 180:
      level = {crop.source.right() - right, crop.source.bottom() - bottom, right - left, bottom - top};
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
