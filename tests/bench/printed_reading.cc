#include "bench/printed_reading.h"

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <string>
#include <utility>

namespace benchleaf::bench {
namespace {

bool IsAlphanumeric(unsigned char c) { return std::isalnum(c) != 0; }

void AddWords(const scanmaker::PrintedText& printed, std::vector<Word>& words) {
  const double step = static_cast<double>(printed.box.width) / static_cast<double>(printed.text.size());
  for (std::size_t from = 0; from < printed.text.size();) {
    const std::size_t end = std::min(printed.text.find(' ', from), printed.text.size());
    Word word;
    word.text = printed.text.substr(from, end - from);
    word.box = printed.box;
    if (printed.turn == 0) {
      word.box.x += static_cast<int>(step * static_cast<double>(from));
      word.box.width = static_cast<int>(step * static_cast<double>(end - from));
    }
    word.turn = printed.turn;
    word.confidence = 1;
    if (!word.text.empty()) {
      words.push_back(std::move(word));
    }
    from = end + 1;
  }
}

}  // namespace

PageReading ReadingAsPrinted(const scanmaker::MadePage& page) {
  PageReading reading;
  for (const scanmaker::PrintedText& printed : page.printed) {
    AddWords(printed, reading.words);
  }
  std::stable_sort(reading.words.begin(), reading.words.end(), [](const Word& a, const Word& b) {
    return std::pair(a.box.y, a.box.x) < std::pair(b.box.y, b.box.x);
  });
  std::vector<int> heights;
  for (const Word& word : reading.words) {
    const bool letters = word.turn == 0 && std::count_if(word.text.begin(), word.text.end(), IsAlphanumeric) >= 2;
    if (letters) {
      heights.push_back(word.box.height);
    }
  }
  if (!heights.empty()) {
    const auto middle = heights.begin() + static_cast<std::ptrdiff_t>(heights.size() / 2);
    std::nth_element(heights.begin(), middle, heights.end());
    reading.measures.cap_height_px = *middle;
  }
  const int width = page.image.width;
  const int height = page.image.height;
  reading.frame = {width, height, scanmaker::kMadeDpi, 0, 1, 0, width, height};
  return reading;
}

}  // namespace benchleaf::bench
