#include "reading/layer_words.h"

#include <algorithm>
#include <cstddef>
#include <optional>

namespace benchleaf {
namespace {

constexpr double kSurelyRead = 0.85;
constexpr double kBadlyRead = 0.6;
constexpr double kTrustedAgreement = 0.8;
constexpr int kFewestCompared = 10;

// The reading's word in the place of a layer word, if any.
std::optional<std::size_t> WordAt(const Box& box, const std::vector<Word>& words) {
  std::optional<std::size_t> best;
  double best_overlap = 0.4;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const double overlap = OverlapOfSmaller(box, words[i].box);
    if (overlap > best_overlap) {
      best_overlap = overlap;
      best = i;
    }
  }
  return best;
}

}  // namespace

double LayerAgreement(const std::vector<LayerWord>& layer, const PageReading& reading) {
  int compared = 0;
  int alike = 0;
  for (const LayerWord& word : layer) {
    const std::optional<std::size_t> at = WordAt(ToLevel(reading.frame, word.box), reading.words);
    if (at && reading.words[*at].confidence >= kSurelyRead) {
      ++compared;
      alike += reading.words[*at].text == word.text ? 1 : 0;
    }
  }
  return compared < kFewestCompared ? 0 : static_cast<double>(alike) / compared;
}

void AddLayerWords(const std::vector<LayerWord>& layer, PageReading& reading) {
  const double agreement = LayerAgreement(layer, reading);
  if (agreement < kTrustedAgreement) {
    return;
  }
  std::vector<Word> added;
  for (const LayerWord& word : layer) {
    const Box box = ToLevel(reading.frame, word.box);
    const std::optional<std::size_t> at = WordAt(box, reading.words);
    if (!at) {
      added.push_back({word.text,
                       box,
                       (word.turn + reading.frame.orientation) % 360,
                       agreement * agreement,
                       WordOrigin::kLayer,
                       {}});
    } else if (Word& seen = reading.words[*at]; seen.confidence < kBadlyRead && seen.text != word.text) {
      seen.alternatives.push_back({seen.text, seen.confidence});
      seen.text = word.text;
      seen.confidence = agreement * agreement;
      seen.origin = WordOrigin::kLayer;
    }
  }
  reading.words.insert(reading.words.end(), added.begin(), added.end());
}

}  // namespace benchleaf
