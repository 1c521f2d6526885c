#include "benchleaf/extract/misread_words.h"

#include "extract/look_alikes.h"
#include "extract/misreading.h"
#include "extract/plain_text.h"
#include "extract/rule_tables.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <cmath>

namespace benchleaf {
namespace {

constexpr double kLeastRead = 0.005;  // readings less sure than this are scraps
constexpr double kStroke = 0.7;       // the cost of an outline that was read as a letter in front
constexpr double kMostCost = 2.6;     // one character taken for any other

std::string Bare(std::string_view text) { return extract::Upper(extract::Trimmed(extract::PlainText(text))); }

// Without a stroke in front of a letter; the text itself when there is none.
std::string_view WithoutStroke(std::string_view bare) {
  constexpr std::string_view kStrokes = "I1L|";
  const bool stroke = bare.size() > 2 && kStrokes.find(bare[0]) != std::string_view::npos && extract::IsUpper(bare[1]);
  return stroke ? bare.substr(1) : bare;
}

bool BeginsWithLetter(const std::string& text) { return !text.empty() && extract::IsLetter(text.front()); }

bool HasFigure(std::string_view text) { return std::any_of(text.begin(), text.end(), extract::IsDigit); }

bool MayBeTerm(std::string_view bare) {
  constexpr std::size_t kLongest = 14;
  if (!HasFigure(bare)) {
    return false;
  }
  const std::size_t length = Characters(bare).size();
  return length >= 2 && length <= kLongest;
}

template <class Each>
void ForEachReading(const Word& word, const Each& each) {
  each(word.text, word.confidence);
  for (const Alternative& alternative : word.alternatives) {
    each(alternative.text, alternative.confidence);
  }
}

}  // namespace

std::vector<std::string> FoldedReadings(const Word& word, const Rules& rules) {
  std::vector<std::string> folded;
  ForEachReading(word, [&](const std::string& text, double confidence) {
    // Most words have no figure, and no plain spelling gives them one but that of a fraction, which is no ASCII.
    if (confidence < kLeastRead || (!HasFigure(text) && IsAscii(text))) {
      return;
    }
    const std::string bare = Bare(text);
    for (const std::string_view one : {std::string_view(bare), WithoutStroke(bare)}) {
      if (MayBeTerm(one)) {
        folded.push_back(extract::Folded(one, rules.tables()));
      }
    }
  });
  std::sort(folded.begin(), folded.end());
  folded.erase(std::unique(folded.begin(), folded.end()), folded.end());
  return folded;
}

double LikenessOf(std::string_view read, std::string_view term, const Rules& rules) {
  const std::string bare(extract::Trimmed(extract::PlainText(read)));
  double cost = extract::MisreadingCost(bare, term, rules.tables());
  if (const std::string_view rest = WithoutStroke(bare); rest.size() < bare.size()) {
    cost = std::min(cost, kStroke + extract::MisreadingCost(rest, term, rules.tables()));
  }
  return cost > kMostCost ? 0 : std::exp(-cost);
}

Beginning BeginningOf(std::string_view beginning, std::string_view term, const Rules& rules) {
  const double least = extract::LeastMisreadingCost(beginning, term, rules.tables());
  if (least > kMostCost) {
    return Beginning::kNoLikeness;
  }
  return least + extract::kCostOfASpeck > kMostCost ? Beginning::kWithItsCharacters : Beginning::kWithAny;
}

double LikenessOf(const Word& word, std::string_view term, const Rules& rules) {
  double best = 0;
  ForEachReading(word, [&](const std::string& text, double confidence) {
    // A short number is no designator for looking like one.
    const bool lettered = term.size() > 3 || !extract::IsUpper(term.front()) || BeginsWithLetter(Bare(text));
    if (confidence >= kLeastRead && lettered) {
      best = std::max(best, confidence * LikenessOf(text, term, rules));
    }
  });
  return best;
}

}  // namespace benchleaf
