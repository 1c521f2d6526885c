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

bool StandsThere(const scanmaker::PageTruth& truth, const Seen& seen) {
  return std::any_of(truth.terms.begin(), truth.terms.end(), [&](const scanmaker::TruthTerm& term) {
    return term.kind != "designator" && term.text == seen.text && OverlapOfSmaller(term.box, seen.box) >= kLeastOverlap;
  });
}

}  // namespace

PageVerdict JudgeDesignators(const scanmaker::PageTruth& truth, const std::vector<Seen>& seen) {
  PageVerdict verdict;
  for (const scanmaker::TruthTerm& term : truth.terms) {
    if (term.kind == "designator") {
      verdict.truth.push_back({term, false});
    }
  }
  for (const Seen& one : seen) verdict.seen.push_back({one, Judgement::kFalse});

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
    if (one.judgement != Judgement::kRight && StandsThere(truth, one.seen)) {
      one.judgement = Judgement::kOtherText;
    }
  }
  return verdict;
}

void Tally::Add(const PageVerdict& verdict, double page_seconds) {
  for (const TruthVerdict& one : verdict.truth) {
    const bool stands = one.term.turn % 180 != 0;
    ++(stands ? turned : upright);
    (stands ? turned_found : upright_found) += one.found ? 1 : 0;
  }
  for (const SeenVerdict& one : verdict.seen) {
    false_seen += one.judgement == Judgement::kFalse ? 1 : 0;
    other_text += one.judgement == Judgement::kOtherText ? 1 : 0;
  }
  ++pages;
  seconds += page_seconds;
}

double Tally::Recall() const { return Share(upright_found + turned_found, upright + turned); }
double Tally::UprightRecall() const { return Share(upright_found, upright); }
double Tally::TurnedRecall() const { return Share(turned_found, turned); }
double Tally::Precision() const {
  const int right = upright_found + turned_found;
  return Share(right, right + false_seen);
}
double Tally::SecondsPerPage() const { return pages == 0 ? 0 : seconds / pages; }

}  // namespace benchleaf::bench
