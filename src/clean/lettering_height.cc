#include "clean/lettering_height.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <utility>
#include <vector>

namespace benchleaf {

namespace {

// The same of a component of that box and so many pixels of ink.
bool IsGlyphLike(const Box& box, int ink, double cap_px) {
  const double width = box.width;
  const double height = box.height;
  // Proportions of single letters: not wider than 1.3 heights, and a stroke of a tenth of the height at least, that
  // leaves more than a third of the box empty unless the letter is a bar itself.
  const bool bar = width < 0.4 * height;
  return height >= 0.5 * cap_px && height <= 2.1 * cap_px && width <= 1.3 * height && ink >= 0.09 * height * height &&
         (bar || ink <= 0.62 * width * height);
}

// Letters by the left edges of their boxes.
std::vector<Box> FromTheLeft(std::vector<Box> letters) {
  std::sort(letters.begin(), letters.end(), [](const Box& a, const Box& b) { return a.x < b.x; });
  return letters;
}

// The first letter behind the one at `index` that stands within `gap` of its heights and fits it: `fits(left, right)`.
// The number of letters where there is none.
template <class Fits>
std::size_t Follower(const std::vector<Box>& from_the_left, std::size_t index, const Fits& fits, double gap = 1) {
  const Box& left = from_the_left[index];
  const int reach = left.right() + static_cast<int>(gap * left.height);
  for (std::size_t i = index + 1; i < from_the_left.size() && from_the_left[i].x <= reach; ++i) {
    if (from_the_left[i].x >= left.right() && fits(left, from_the_left[i])) {
      return i;
    }
  }
  return from_the_left.size();
}

// Whether two letters are of one height and stand on one line.
bool AreAlike(const Box& left, const Box& right) {
  // A drawing's skew lets the second stand a little higher or lower.
  const int uneven = std::max(1, left.height / 8);
  return std::abs(right.height - left.height) <= uneven && std::abs(right.bottom() - left.bottom()) <= 2 * uneven;
}

// Whether two letters may be a capital and a small one on one line, either way round, or two alike.
bool MayBeOfOneWord(const Box& left, const Box& right) {
  return 5 * left.height >= 3 * right.height && 5 * right.height >= 3 * left.height &&
         std::abs(right.bottom() - left.bottom()) <= std::max(1, std::max(left.height, right.height) / 4);
}

// Which of the letters stand beside another.
std::vector<bool> BesideOthers(const std::vector<Box>& from_the_left) {
  std::vector<bool> beside(from_the_left.size(), false);
  for (std::size_t i = 0; i < from_the_left.size(); ++i) {
    const std::size_t next = Follower(from_the_left, i, MayBeOfOneWord);
    if (next < from_the_left.size()) {
      beside[i] = true;
      beside[next] = true;
    }
  }
  return beside;
}

// How many letters have one like them to their right, as near as letters of a word are, and lines of text are not.
int AlikePairs(const std::vector<Box>& from_the_left) {
  constexpr double kWithinWord = 0.5;
  int pairs = 0;
  for (std::size_t i = 0; i < from_the_left.size(); ++i) {
    pairs += Follower(from_the_left, i, AreAlike, kWithinWord) < from_the_left.size() ? 1 : 0;
  }
  return pairs;
}

// The boxes of all that may be letters and is `lowest` to `highest` px high, from the left. Where far more of them
// stand in pairs when the page is laid on its side, as that page has them: x and y, width and height exchanged.
std::vector<Box> LettersAsTheyStand(const Components& components, double lowest, double highest) {
  std::vector<Box> upright;
  std::vector<Box> sideways;
  const auto add = [&](const Box& box, int ink, std::vector<Box>& letters) {
    // Narrow letters and broken strokes say little of the height; letters proper are wider than a third of it.
    if (box.height < highest && box.height >= lowest && box.width * 3 >= box.height &&
        IsGlyphLike(box, ink, box.height)) {
      letters.push_back(box);
    }
  };
  for (const Component& component : components.items) {
    const Box& box = component.box;
    add(box, component.ink, upright);
    add({box.y, box.x, box.height, box.width}, component.ink, sideways);
  }
  upright = FromTheLeft(std::move(upright));
  sideways = FromTheLeft(std::move(sideways));
  // On severe pages dust and dotted lines make pairs either way; letters make more and stand in them.
  constexpr double kFarMore = 1.5;
  constexpr double kFewest = 0.065;  // of all that may be letters
  const int pairs = AlikePairs(sideways);
  return pairs > kFarMore * AlikePairs(upright) && pairs > kFewest * static_cast<double>(sideways.size()) ? sideways
                                                                                                          : upright;
}

}  // namespace

bool IsGlyphLike(const Component& component, double cap_px) {
  return IsGlyphLike(component.box, component.ink, cap_px);
}

double EstimateCapHeight(const Components& components, double expected_px) {
  constexpr double kSpread = 0.45;  // of the logarithm: 24 px may well be 15 or 38
  constexpr int kFewest = 15;
  const double highest = 4 * expected_px + 3;
  const std::vector<Box> letters = LettersAsTheyStand(components, 0.35 * expected_px, highest);
  if (letters.size() < kFewest) {
    return expected_px;
  }
  const std::vector<bool> beside = BesideOthers(letters);
  std::vector<double> weight(static_cast<std::size_t>(highest) + 2, 0.0);
  for (std::size_t i = 0; i < letters.size(); ++i) {
    // Letters stand beside letters, dust by itself.
    constexpr double kAlone = 0.2;
    const auto height = static_cast<std::size_t>(letters[i].height);
    const double distance = std::log(letters[i].height / expected_px) / kSpread;
    const double vote = letters[i].height * std::exp(-distance * distance / 2) * (beside[i] ? 1 : kAlone);
    weight[height] += vote;
    // Skew, blur and thresholds move a height by a pixel either way.
    weight[height - 1] += vote / 2;
    weight[height + 1] += vote / 2;
  }
  return static_cast<double>(std::max_element(weight.begin(), weight.end()) - weight.begin());
}

double ContradictingHeight(const Components& components, double expected_px) {
  constexpr int kLowest = 6;  // px; lower ones are dust and halftone dots
  constexpr int kHighest = 120;
  constexpr int kFewestPairs = 20;
  // Small letters come to seven tenths of capitals, and printed sizes differ: less is no contradiction.
  constexpr double kContradicts = 1.8;
  const auto as_expected = [&](double height) {
    return height <= kContradicts * expected_px && expected_px <= kContradicts * height;
  };
  constexpr double kFew = 0.25;  // of all pairs
  const std::vector<Box> letters = LettersAsTheyStand(components, kLowest, kHighest + 1);
  std::vector<int> pairs(kHighest + 2, 0);
  int count = 0;
  int fitting = 0;
  for (std::size_t i = 0; i < letters.size(); ++i) {
    if (Follower(letters, i, AreAlike) < letters.size()) {
      // Tall letters are not dust.
      pairs[static_cast<std::size_t>(letters[i].height)] += letters[i].height;
      ++count;
      fitting += as_expected(letters[i].height) ? 1 : 0;
    }
  }
  if (count < kFewestPairs || fitting >= kFew * count) {
    return 0;
  }
  std::size_t best = 0;
  int most = 0;
  for (std::size_t height = 1; height + 1 < pairs.size(); ++height) {
    const int here = pairs[height - 1] + 2 * pairs[height] + pairs[height + 1];
    if (here > most) {
      most = here;
      best = height;
    }
  }
  return as_expected(static_cast<double>(best)) ? 0 : static_cast<double>(best);
}

}  // namespace benchleaf
