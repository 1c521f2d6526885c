// Pages for tests, written as lines of typewriter text.

#ifndef BENCHLEAF_TESTS_EXTRACT_PAGE_TEXT_H_
#define BENCHLEAF_TESTS_EXTRACT_PAGE_TEXT_H_

#include "places/places.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/reading/page_reading.h"

#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace benchleaf {

// The grid on which PageOf lays text: a typewriter's, at about 200 dpi.
inline constexpr int kCharWidth = 14;  // px
inline constexpr int kCapHeight = 22;  // px
inline constexpr int kLinePitch = 40;  // px
inline constexpr int kMargin = 100;    // px, left and top

// A page of these lines, every word at its column, in a reading that is 1:1 with the scan. Empty lines leave space.
inline PageReading PageOf(const std::vector<std::string>& lines, WordOrigin origin = WordOrigin::kPage) {
  PageReading reading;
  std::size_t longest = 60;
  int y = kMargin;
  for (const std::string& line : lines) {
    longest = line.size() > longest ? line.size() : longest;
    for (std::size_t at = line.find_first_not_of(' '); at != std::string::npos; at = line.find_first_not_of(' ', at)) {
      std::size_t end = line.find(' ', at);
      end = end == std::string::npos ? line.size() : end;
      Word word;
      word.text = line.substr(at, end - at);
      word.box = {kMargin + static_cast<int>(at) * kCharWidth, y, static_cast<int>(end - at) * kCharWidth, kCapHeight};
      word.confidence = 1;
      word.origin = origin;
      reading.words.push_back(word);
      at = end;
    }
    y += kLinePitch;
  }
  const int width = 2 * kMargin + static_cast<int>(longest) * kCharWidth;
  const int height = y + kMargin;
  reading.frame = {width, height, 200, 0, 1, 0, width, height};
  reading.measures.cap_height_px = kCapHeight;
  return reading;
}

// The project's own rules, as shipped in config/.
inline const Rules& ShippedRules() {
  static const std::shared_ptr<const Rules> rules = [] {
    auto loaded = Rules::Load(SourceFolder() / "config");
    if (!loaded) {
      throw std::runtime_error(loaded.error().ToString());
    }
    return *loaded;
  }();
  return *rules;
}

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_EXTRACT_PAGE_TEXT_H_
