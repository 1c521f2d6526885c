#include "bench/scorer.h"

#include <algorithm>
#include <cstddef>

namespace benchleaf::bench {
namespace {

constexpr double kLeastOverlap = 0.3;

struct Pair {
  double overlap;
  std::size_t truth;
  std::size_t seen;
};

double Share(int part, int whole) { return whole == 0 ? 0 : static_cast<double>(part) / whole; }

// The kind of other text that stands there, or empty.
std::string StandsAs(const scanmaker::PageTruth& truth, std::string_view kind, const Seen& seen) {
  const auto there = std::find_if(truth.terms.begin(), truth.terms.end(), [&](const scanmaker::TruthTerm& term) {
    return term.kind != kind && term.text == seen.text && OverlapOfSmaller(term.box, seen.box) >= kLeastOverlap;
  });
  return there == truth.terms.end() ? std::string() : there->kind;
}

}  // namespace

PageVerdict JudgeTerms(const scanmaker::PageTruth& truth, std::string_view kind, const std::vector<Seen>& seen) {
  PageVerdict verdict;
  for (const scanmaker::TruthTerm& term : truth.terms) {
    if (term.kind == kind) {
      verdict.truth.push_back({term, false});
    }
  }
  for (const Seen& one : seen) verdict.seen.push_back({one, Judgement::kFalse, {}});

  std::vector<Pair> pairs;
  for (std::size_t t = 0; t < verdict.truth.size(); ++t) {
    for (std::size_t s = 0; s < seen.size(); ++s) {
      const double overlap = OverlapOfSmaller(verdict.truth[t].term.box, seen[s].box);
      if (verdict.truth[t].term.text == seen[s].text && overlap >= kLeastOverlap) {
        pairs.push_back({overlap, t, s});
      }
    }
  }
  std::stable_sort(pairs.begin(), pairs.end(), [](const Pair& a, const Pair& b) { return a.overlap > b.overlap; });
  for (const Pair& pair : pairs) {
    if (!verdict.truth[pair.truth].found && verdict.seen[pair.seen].judgement != Judgement::kRight) {
      verdict.truth[pair.truth].found = true;
      verdict.seen[pair.seen].judgement = Judgement::kRight;
    }
  }
  for (SeenVerdict& one : verdict.seen) {
    if (one.judgement != Judgement::kRight) {
      one.stands_as = StandsAs(truth, kind, one.seen);
      one.judgement = one.stands_as.empty() ? Judgement::kFalse : Judgement::kOtherText;
    }
  }
  return verdict;
}

void Tally::Add(const PageVerdict& verdict) {
  for (const TruthVerdict& one : verdict.truth) {
    const bool stands = one.term.turn % 180 != 0;
    ++(stands ? turned : upright);
    (stands ? turned_found : upright_found) += one.found ? 1 : 0;
  }
  for (const SeenVerdict& one : verdict.seen) {
    if (one.judgement == Judgement::kFalse) {
      ++false_seen;
    } else if (one.judgement == Judgement::kOtherText) {
      ++(one.stands_as == "net" ? nets_seen : one.stands_as == "pin" ? pins_seen : other_seen);
    }
  }
}

double Tally::Recall() const { return Share(found(), on_pages()); }
double Tally::UprightRecall() const { return Share(upright_found, upright); }
double Tally::TurnedRecall() const { return Share(turned_found, turned); }
double Tally::Precision() const { return Share(found(), found() + false_seen); }
double Tally::StrictPrecision() const {
  return Share(found(), found() + false_seen + nets_seen + pins_seen + other_seen);
}

}  // namespace benchleaf::bench
