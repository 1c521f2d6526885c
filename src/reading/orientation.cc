#include "reading/orientation.h"

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// Strings of this many components are words, not scraps of symbols, and are quickly read.
constexpr std::size_t kFewestLetters = 3;
constexpr std::size_t kMostLetters = 14;
constexpr double kLongestCaps = 22;

// Strings along one axis of the page.
struct Axis {
  std::vector<TextString> strings;  // the best to read first
  std::size_t letters = 0;          // of all of them
};

// What reading the sample of an axis both ways told.
struct Verdict {
  double lead = 0;  // of the first way over its opposite, summed over the strings; negative: the opposite reads better
  double legibility = 0;  // of the better way, mean: 0 to 1
};

// Long strings tell more, and those near each other tell the same: every fourth of the order is taken first.
void PutBestFirst(std::vector<TextString>& strings) {
  std::stable_sort(strings.begin(), strings.end(), [](const TextString& a, const TextString& b) {
    const auto long_enough = [](const TextString& string) { return std::min<std::size_t>(string.letters, 5); };
    return long_enough(a) > long_enough(b);
  });
  constexpr std::size_t kStride = 4;
  std::vector<TextString> mixed;
  for (std::size_t start = 0; start < kStride; ++start) {
    for (std::size_t i = start; i < strings.size(); i += kStride) {
      mixed.push_back(std::move(strings[i]));
    }
  }
  strings = std::move(mixed);
}

// How surely the string reads that way: mean confidence of its letters and figures; 0 where signs prevail.
double Legibility(const CleanPage& page, const TextString& string, int turn, Recognizer& recognizer) {
  double sure = 0;
  std::size_t letters = 0;
  std::size_t signs = 0;
  for (const Token& token : recognizer.ReadLine(CutString(page, string, turn).image)) {
    const auto count = static_cast<std::size_t>(
        std::count_if(token.text.begin(), token.text.end(), [](unsigned char c) { return std::isalnum(c) != 0; }));
    letters += count;
    signs += token.text.size() - count;
    sure += token.confidence * static_cast<double>(count);
  }
  return letters < 2 || signs > letters ? 0 : sure / static_cast<double>(letters);
}

// Reads strings of the axis with `turn` and the other way round until one of the two leads clearly.
Verdict ReadBothWays(const CleanPage& page, const Axis& axis, int turn, Recognizer& recognizer) {
  constexpr std::size_t kFewest = 6;
  constexpr std::size_t kMost = 30;
  constexpr double kClearLead = 2;
  double first = 0;
  double opposite = 0;
  std::size_t count = 0;
  for (const TextString& string : axis.strings) {
    if (count == kMost || (count >= kFewest && std::abs(first - opposite) >= kClearLead)) {
      break;
    }
    ++count;
    first += Legibility(page, string, turn, recognizer);
    opposite += Legibility(page, string, (turn + 180) % 360, recognizer);
  }
  return count == 0 ? Verdict{} : Verdict{first - opposite, std::max(first, opposite) / static_cast<double>(count)};
}

}  // namespace

int FindOrientation(const CleanPage& page, Recognizer& recognizer) {
  Axis lying;
  Axis standing;
  for (TextString& string : FindStrings(page, kStringGaps)) {
    if (string.letters >= kFewestLetters && string.letters <= kMostLetters &&
        string.length() <= kLongestCaps * page.measures.cap_height_px) {
      Axis& axis = string.standing ? standing : lying;
      axis.letters += string.letters;
      axis.strings.push_back(std::move(string));
    }
  }
  PutBestFirst(lying.strings);
  PutBestFirst(standing.strings);

  // Upright pages hold some standing text. Where both are many, the way that reads better decides.
  constexpr std::size_t kPrevails = 4;  // times as many letters
  const bool may_lie = standing.letters <= kPrevails * lying.letters;
  const bool may_stand = lying.letters <= kPrevails * standing.letters;
  const Verdict level = may_lie ? ReadBothWays(page, lying, 0, recognizer) : Verdict{};
  const Verdict upended = may_stand ? ReadBothWays(page, standing, 270, recognizer) : Verdict{};
  const auto weight = [](const Axis& axis, const Verdict& verdict) {
    return static_cast<double>(axis.letters) * verdict.legibility * verdict.legibility;
  };
  constexpr double kUprightIsLikelier = 1.5;
  if (weight(standing, upended) > kUprightIsLikelier * weight(lying, level)) {
    // Text that runs up the page (270) becomes upright by a turn of 90 degrees clockwise, and the other way round.
    return upended.lead >= 0 ? 90 : 270;
  }
  constexpr double kUpsideDownForSure = 1;
  return level.lead < -kUpsideDownForSure ? 180 : 0;
}

}  // namespace benchleaf
