#include "benchleaf/clean/clean_page.h"
#include "benchleaf/pixels/operations.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

// Closeness of fragments is judged at a quarter of the size: gaps of a few px do not matter there.
constexpr int kShrink = 4;

bool IsFragment(const Component& component, double cap) {
  return component.box.width <= 7 * cap && component.box.height <= 7 * cap && component.ink >= 6 &&
         std::min(component.box.width, component.box.height) <= 1.9 * cap;
}

InkImage PaintSmall(const CleanPage& page, const std::vector<std::size_t>& fragments) {
  InkImage small(page.grey.width / kShrink + 1, page.grey.height / kShrink + 1);
  for (const std::size_t i : fragments) {
    const Component& component = page.components.items[i];
    for (std::size_t r = 0; r < component.run_count; ++r) {
      const Run& run = page.components.runs[component.first_run + r];
      small.row(run.y / kShrink).Ink(run.begin / kShrink, (run.end - 1) / kShrink + 1);
    }
  }
  return small;
}

bool IsStringSized(const Box& box, double cap) {
  return box.height >= 0.6 * cap && box.height <= 1.9 * cap && box.width >= 1.1 * cap && box.width <= 14 * cap;
}

// Which blob each pixel of the small picture belongs to, -1 for none.
std::vector<int> Labels(const Components& blobs, const InkImage& small) {
  std::vector<int> labels(static_cast<std::size_t>(small.width) * static_cast<std::size_t>(small.height), -1);
  for (std::size_t i = 0; i < blobs.items.size(); ++i) {
    const Component& blob = blobs.items[i];
    for (std::size_t r = 0; r < blob.run_count; ++r) {
      const Run& run = blobs.runs[blob.first_run + r];
      const auto row = labels.begin() + static_cast<std::ptrdiff_t>(run.y) * small.width;
      std::fill(row + run.begin, row + run.end, static_cast<int>(i));
    }
  }
  return labels;
}

void AppendBlobs(const CleanPage& page, const std::vector<std::size_t>& fragments, const InkImage& small, bool standing,
                 std::vector<TextString>& strings) {
  const double cap = page.measures.cap_height_px;
  const int along = std::max(1, static_cast<int>(std::lround(0.7 * cap / kShrink)));
  const int across = std::max(1, static_cast<int>(std::lround(0.35 * cap / kShrink)));
  const InkImage closed = standing ? Closed(small, across, along) : Closed(small, along, across);
  const Components blobs = FindComponents(closed);
  const std::vector<int> labels = Labels(blobs, closed);
  std::vector<TextString> found(blobs.items.size());
  for (const std::size_t i : fragments) {
    const Component& component = page.components.items[i];
    const Run& run = page.components.runs[component.first_run];
    const int label = labels[static_cast<std::size_t>(run.y / kShrink) * static_cast<std::size_t>(closed.width) +
                             static_cast<std::size_t>(run.begin / kShrink)];
    if (label >= 0) {
      TextString& string = found[static_cast<std::size_t>(label)];
      string.box = Union(string.box, component.box);
      string.members.push_back(i);
    }
  }
  for (TextString& string : found) {
    const Box& box = string.box;
    if (string.members.size() > 1 && IsStringSized(standing ? Box{box.y, box.x, box.height, box.width} : box, cap)) {
      string.standing = standing;
      string.broken = true;
      strings.push_back(std::move(string));
    }
  }
}

}  // namespace

std::vector<TextString> FindBrokenStrings(const CleanPage& page) {
  std::vector<std::size_t> fragments;
  for (std::size_t i = 0; i < page.components.items.size(); ++i) {
    if (IsFragment(page.components.items[i], page.measures.cap_height_px)) {
      fragments.push_back(i);
    }
  }
  const InkImage small = PaintSmall(page, fragments);
  std::vector<TextString> strings;
  AppendBlobs(page, fragments, small, false, strings);
  AppendBlobs(page, fragments, small, true, strings);
  return strings;
}

}  // namespace benchleaf
