#include "benchleaf/report/laid_words.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>
#include <utility>

namespace benchleaf {
namespace {

// How much of each other two boxes must cover to be one place.
constexpr double kSamePlace = 0.7;

bool IsSamePlace(const FractionBox& a, const FractionBox& b) {
  const double area_a = a.width * a.height;
  const double area_b = b.width * b.height;
  if (area_a <= 0 || area_b <= 0) return false;
  return OverlapOfSmaller(a, b) * std::min(area_a, area_b) > kSamePlace * std::max(area_a, area_b);
}

// The text along a box whose corners, clockwise from the upper left one, are those of the text when it stands upright;
// `turn` is how far it stands turned clockwise.
LaidWord Along(std::string text, const std::array<FractionPoint, 4>& corners, int turn) {
  // Turned by a quarter, the text's own upper left corner is the box's upper right one, and so on.
  const auto own = [&](std::size_t corner) {
    return corners.at((corner + static_cast<std::size_t>(turn / 90)) % corners.size());
  };
  return {std::move(text), own(3), own(2), own(0)};
}

std::array<FractionPoint, 4> CornersOf(const FractionBox& box) {
  return {{{box.x, box.y},
           {box.x + box.width, box.y},
           {box.x + box.width, box.y + box.height},
           {box.x, box.y + box.height}}};
}

// The corners of the word in the order of the level page, where they lie on the scan.
std::array<FractionPoint, 4> CornersOf(const PageFrame& frame, const Box& box) {
  return {{PointOnScan(frame, box.x, box.y), PointOnScan(frame, box.right(), box.y),
           PointOnScan(frame, box.right(), box.bottom()), PointOnScan(frame, box.x, box.bottom())}};
}

// A word, and what the index takes it for.
struct KnownWord {
  const Word* word = nullptr;
  FractionBox box;
  std::vector<const Sighting*> terms;
};

bool Holds(const std::vector<std::string>& texts, const std::string& text) {
  return std::find(texts.begin(), texts.end(), text) != texts.end();
}

std::string Spaced(const std::vector<std::string>& texts) {
  std::string spaced;
  for (const std::string& text : texts) spaced.append(spaced.empty() ? "" : " ").append(text);
  return spaced;
}

}  // namespace

std::vector<LaidWord> LaidWords(const PageRecord& page) {
  const PageFrame& frame = page.reading.frame;
  std::vector<KnownWord> words;
  if (frame.scan_width > 0 && frame.scan_height > 0 && frame.scale > 0) {
    for (const Word& word : page.reading.words) words.push_back({&word, ToScan(frame, word.box), {}});
  }
  // Terms beside words: those of one place together.
  std::vector<std::pair<const Sighting*, std::vector<std::string>>> beside;
  for (const Sighting& term : page.sightings) {
    const auto same = std::find_if(words.begin(), words.end(),
                                   [&](const KnownWord& word) { return IsSamePlace(word.box, term.box); });
    if (same != words.end()) {
      same->terms.push_back(&term);
      continue;
    }
    auto place =
        std::find_if(beside.begin(), beside.end(), [&](const auto& one) { return one.first->box == term.box; });
    if (place == beside.end()) place = beside.insert(beside.end(), {&term, {}});
    if (!Holds(place->second, term.text)) place->second.push_back(term.text);
  }

  std::vector<LaidWord> laid;
  for (const KnownWord& known : words) {
    std::vector<std::string> texts;
    for (const Sighting* term : known.terms) {
      if (!Holds(texts, term->text)) texts.push_back(term->text);
    }
    if (texts.empty()) texts.push_back(known.word->text);
    laid.push_back(Along(Spaced(texts), CornersOf(frame, known.word->box), known.word->turn));
  }
  for (const auto& [term, texts] : beside) {
    laid.push_back(Along(Spaced(texts), CornersOf(term->box), term->turn));
  }
  return laid;
}

}  // namespace benchleaf
