#include "benchleaf/clean/spaced_strings.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace benchleaf {
namespace {

constexpr double kWidestGapCaps = 1.7;
constexpr double kEvenCaps = 0.6;  // by how much gaps of one designator differ: a 1 is narrow
constexpr std::size_t kFewest = 2;
constexpr std::size_t kMost = 5;

bool IsLoneLetter(const TextString& string, double cap) {
  return !string.standing && string.letters == 1 && string.box.height >= 0.7 * cap && string.box.height <= 1.3 * cap &&
         string.box.width <= 1.2 * cap && string.box.width >= 0.12 * cap;
}

int Gap(const Box& left, const Box& right) { return right.x - left.right(); }

bool OnOneRow(const Box& a, const Box& b) {
  constexpr double kCommon = 0.6;  // of the higher
  return std::min(a.bottom(), b.bottom()) - std::max(a.y, b.y) >= kCommon * std::max(a.height, b.height);
}

// The nearest letter to the right within reach.
std::optional<std::size_t> NextOf(const std::vector<const TextString*>& letters, std::size_t i, double cap) {
  std::optional<std::size_t> next;
  for (std::size_t j = i + 1; j < letters.size() && Gap(letters[i]->box, letters[j]->box) <= kWidestGapCaps * cap;
       ++j) {
    const int gap = Gap(letters[i]->box, letters[j]->box);
    if (gap > 0 && OnOneRow(letters[i]->box, letters[j]->box) &&
        (!next || gap < Gap(letters[i]->box, letters[*next]->box))) {
      next = j;
    }
  }
  return next;
}

TextString Joined(const std::vector<const TextString*>& letters) {
  TextString joined;
  joined.letters = letters.size();
  for (const TextString* letter : letters) {
    joined.box = Union(joined.box, letter->box);
    joined.members.insert(joined.members.end(), letter->members.begin(), letter->members.end());
  }
  return joined;
}

}  // namespace

std::vector<TextString> FindSpacedStrings(const CleanPage& page, const std::vector<TextString>& strings) {
  const double cap = page.measures.cap_height_px;
  std::vector<const TextString*> letters;
  for (const TextString& string : strings) {
    if (IsLoneLetter(string, cap)) {
      letters.push_back(&string);
    }
  }
  std::sort(letters.begin(), letters.end(),
            [](const TextString* a, const TextString* b) { return a->box.x < b->box.x; });
  std::vector<TextString> spaced;
  std::vector<bool> taken(letters.size(), false);
  for (std::size_t i = 0; i < letters.size(); ++i) {
    if (taken[i]) {
      continue;
    }
    std::vector<const TextString*> row = {letters[i]};
    double first_gap = 0;
    std::size_t last = i;
    for (auto next = NextOf(letters, i, cap); next; next = NextOf(letters, last, cap)) {
      const int gap = Gap(letters[last]->box, letters[*next]->box);
      if (row.size() > 1 && std::abs(gap - first_gap) > kEvenCaps * cap) {
        break;
      }
      first_gap = row.size() > 1 ? first_gap : gap;
      last = *next;
      taken[last] = true;
      row.push_back(letters[last]);
    }
    if (row.size() >= kFewest && row.size() <= kMost) {
      spaced.push_back(Joined(row));
    }
  }
  return spaced;
}

GreyImage ClosedUp(const GreyImage& line) {
  constexpr std::uint8_t kBlank = 200;
  const auto widest = static_cast<std::size_t>(0.3 * kReaderCapPx);
  std::vector<int> kept;
  std::vector<int> gap;  // not yet kept
  bool lettered = false;
  for (int x = 0; x < line.width; ++x) {
    gap.push_back(x);
    bool is_blank = true;
    for (int y = 0; is_blank && y < line.height; ++y) {
      is_blank = line.row(y)[x] >= kBlank;
    }
    if (!is_blank) {
      // The last columns of a wide gap are kept, and all of the border.
      const std::size_t left_out = lettered && gap.size() > widest ? gap.size() - widest : 0;
      kept.insert(kept.end(), gap.begin() + static_cast<std::ptrdiff_t>(left_out), gap.end());
      gap.clear();
      lettered = true;
    }
  }
  kept.insert(kept.end(), gap.begin(), gap.end());
  GreyImage closed(static_cast<int>(kept.size()), line.height);
  for (int y = 0; y < line.height; ++y) {
    std::transform(kept.begin(), kept.end(), closed.row(y), [&](int x) { return line.row(y)[x]; });
  }
  return closed;
}

}  // namespace benchleaf
