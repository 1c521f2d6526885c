#include "reading/one_string.h"

#include "reading/word_choice.h"

#include "benchleaf/clean/spaced_strings.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace benchleaf {

StringLook LookOf(const CleanPage& page, const TextString& string) {
  const double cap = std::max(1.0, page.measures.cap_height_px);
  return {string.broken, string.standing, string.letters, string.length() / cap, string.breadth() / cap};
}

std::vector<Word> ReadSpaced(const CleanPage& page, const StringCrop& crop, const TextString& string,
                             LineReader& reader) {
  constexpr int kLeastClosedPx = 6;
  constexpr double kReadsWell = 0.8;
  const GreyImage closed = ClosedUp(crop.image);
  if (closed.width + kLeastClosedPx > crop.image.width) {
    return {};
  }
  StringLook look = LookOf(page, string);
  look.length *= static_cast<double>(closed.width - 2 * crop.border) / (crop.image.width - 2 * crop.border);
  for (Token& token : reader.Read(closed, look)) {
    if (token.text.size() == string.letters && token.confidence >= kReadsWell && HasDesignatorForm(token.text)) {
      return {{std::move(token.text), string.box, crop.turn, token.confidence, WordOrigin::kString, {}}};
    }
  }
  return {};
}

std::vector<Word> ReadOne(const CleanPage& page, const TextString& string, int turn, LineReader& reader) {
  constexpr std::size_t kMostSpacedLetters = 5;
  const StringCrop crop = CutString(page, string, turn);
  if (page.steps.spaced && string.letters >= 2 && string.letters <= kMostSpacedLetters) {
    std::vector<Word> spaced = ReadSpaced(page, crop, string, reader);
    if (!spaced.empty()) {
      return spaced;
    }
  }
  std::vector<Word> words;
  for (Token& token : reader.Read(crop.image, LookOf(page, string))) {
    words.push_back({std::move(token.text), ToLevel(crop, token.box), turn, token.confidence, WordOrigin::kString,
                     std::move(token.alternatives)});
  }
  return words;
}

std::vector<Word>::const_iterator Surest(const std::vector<Word>& words) {
  return std::max_element(words.begin(), words.end(),
                          [](const Word& a, const Word& b) { return a.confidence < b.confidence; });
}

double BestConfidence(const std::vector<Word>& words) {
  const auto best = Surest(words);
  return best == words.end() ? 0 : best->confidence;
}

}  // namespace benchleaf
