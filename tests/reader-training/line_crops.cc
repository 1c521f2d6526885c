#include "reader-training/line_crops.h"

#include "reading/one_string.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/core/geometry.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace benchleaf::training {
namespace {

double Area(const FractionBox& box) { return box.width * box.height; }

double Common(const FractionBox& a, const FractionBox& b) {
  const double width = std::min(a.x + a.width, b.x + b.width) - std::max(a.x, b.x);
  const double height = std::min(a.y + a.height, b.y + b.height) - std::max(a.y, b.y);
  return width > 0 && height > 0 ? width * height : 0;
}

// How a string relates to the page's texts.
struct Match {
  const scanmaker::TruthTerm* term = nullptr;  // the one text that it holds
  bool scrap = false;                          // touches no text
};

Match MatchOf(const FractionBox& box, bool standing, const std::vector<scanmaker::TruthTerm>& terms) {
  Match match;
  match.scrap = true;
  for (const scanmaker::TruthTerm& term : terms) {
    const double common = Common(box, term.box);
    match.scrap = match.scrap && common < 0.02 * std::min(Area(box), Area(term.box));
    if (common > 0.7 * Area(term.box) && common > 0.6 * Area(box) && standing == (term.turn != 0)) {
      match.term = &term;
    }
  }
  return match;
}

// What stands in the box of a lying phrase, from the left; nothing when a term is cut by the box, or the terms fill
// less of it than words do.
std::optional<std::string> PhraseIn(const FractionBox& box, const std::vector<scanmaker::TruthTerm>& terms) {
  std::vector<const scanmaker::TruthTerm*> inside;
  double filled = 0;
  for (const scanmaker::TruthTerm& term : terms) {
    const double common = Common(box, term.box);
    if (common < 0.1 * Area(term.box)) {
      continue;
    }
    if (common < 0.75 * Area(term.box)) {
      return std::nullopt;
    }
    inside.push_back(&term);
    filled += term.box.width;
  }
  if (filled < 0.6 * box.width) {
    return std::nullopt;
  }
  std::sort(inside.begin(), inside.end(), [](const auto* a, const auto* b) { return a->box.x < b->box.x; });
  std::string text;
  for (const scanmaker::TruthTerm* term : inside) text += (text.empty() ? "" : " ") + term->text;
  return text;
}

}  // namespace

std::vector<LineCrop> PhraseCropsOf(const scanmaker::ScannedPage& page) {
  constexpr std::size_t kPhraseLetters = 8;
  const CleanPage clean = MakeCleanPage(page.image, page.dpi, 0);
  std::vector<LineCrop> crops;
  for (const TextString& phrase : FindStrings(clean, kPhraseGaps)) {
    const std::optional<std::string> text = PhraseIn(ToScan(clean.frame, phrase.box), page.truth.terms);
    if (phrase.members.size() >= kPhraseLetters && text) {
      crops.push_back({.image = CutString(clean, phrase, 0).image, .text = text, .look = LookOf(clean, phrase)});
    }
  }
  return crops;
}

std::vector<LineCrop> CropsOf(const scanmaker::ScannedPage& page, double cap_px) {
  const CleanPage clean = MakeCleanPage(page.image, page.dpi, 0);
  std::vector<TextString> strings = FindStrings(clean, kStringGaps);
  std::erase_if(strings, [&](const TextString& string) { return !IsReadable(clean, string); });
  for (TextString& broken : FindBrokenStrings(clean)) strings.push_back(std::move(broken));
  std::vector<LineCrop> crops;
  for (const TextString& string : strings) {
    const Match match = MatchOf(ToScan(clean.frame, string.box), string.standing, page.truth.terms);
    const int turn = match.term != nullptr ? match.term->turn : string.standing ? 270 : 0;
    LineCrop crop;
    crop.image = CutString(clean, string, turn, cap_px).image;
    if (match.term != nullptr) {
      crop.text = match.term->text;
    } else if (match.scrap) {
      crop.text = kNoText;
    }
    crop.look = LookOf(clean, string);
    crops.push_back(std::move(crop));
  }
  return crops;
}

}  // namespace benchleaf::training
