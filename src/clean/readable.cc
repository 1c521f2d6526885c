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

// A few letters that touch: longer than one letter is. They may be smaller than the page's lettering for the most.
bool MayBeSeveral(const CleanPage& page, const TextString& string) {
  constexpr double kSmall = 0.65;
  return string.length() >= std::max<double>(string.breadth(), kSmall * page.measures.cap_height_px) &&
         !IsOutline(page, string);
}

}  // namespace

bool IsReadable(const CleanPage& page, const TextString& string) {
  return string.length() <= kLongestStringCaps * page.measures.cap_height_px &&
         (string.letters >= 2 || MayBeSeveral(page, string));
}

}  // namespace benchleaf
