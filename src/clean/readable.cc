#include "benchleaf/clean/clean_page.h"

#include <algorithm>

namespace benchleaf {
namespace {

constexpr double kLongestStringCaps = 22;

// The outline of a symbol: a triangle for ground or an amplifier reads as V7. A letter's hole is no longer than the
// letter, so that it takes less of a string of several.
bool IsOutline(const CleanPage& page, const TextString& string) {
  constexpr double kHoleOfAnOutline = 0.55;
  if (string.members.size() != 1) {
    return false;
  }
  const Box hole = LargestHole(page.components, string.members.front());
  return (string.standing ? hole.height : hole.width) > kHoleOfAnOutline * string.length();
}

// A few letters that touch: longer than one letter is. Among lying ones even small letters are known by that; what
// seems to stand may be one lying letter, higher than wide.
bool MayBeSeveral(const CleanPage& page, const TextString& string) {
  const double least = (string.standing ? 1.05 : 0.65) * page.measures.cap_height_px;
  return string.length() >= std::max(1.05 * string.breadth(), least) && !IsOutline(page, string);
}

}  // namespace

bool IsReadable(const CleanPage& page, const TextString& string) {
  return string.length() <= kLongestStringCaps * page.measures.cap_height_px &&
         (string.letters >= 2 || MayBeSeveral(page, string));
}

}  // namespace benchleaf
