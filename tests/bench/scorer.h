// Judges what a reader saw on a page against what stands there.

#ifndef BENCHLEAF_TESTS_BENCH_SCORER_H_
#define BENCHLEAF_TESTS_BENCH_SCORER_H_

#include "scan-maker/truth.h"

#include "benchleaf/core/geometry.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {

// A word or term as a reader gave it.
struct Seen {
  std::string text;  // canonical: upper case, no spaces
  FractionBox box;   // of the page as scanned
  double confidence = 0;
};

// One term of the page, found or not.
struct TruthVerdict {
  scanmaker::TruthTerm term;
  bool found = false;
};

enum class Judgement {
  kRight,      // a term of the page, text and place
  kOtherText,  // no term of this kind, but exactly this stands there (a net's label, a pin's name, a value)
  kFalse,      // neither, or the same term a second time
};

struct SeenVerdict {
  Seen seen;
  Judgement judgement = Judgement::kFalse;
  std::string stands_as;  // the truth's kind of other text, else empty
};

struct PageVerdict {
  std::vector<TruthVerdict> truth;
  std::vector<SeenVerdict> seen;
};

// Judges terms of one `kind` (as in scanmaker::TruthTerm). Texts must be equal and the boxes must overlap by 30 % of
// the smaller one; each sighting counts for one term and each term for one sighting, those that fit best first.
PageVerdict JudgeTerms(const scanmaker::PageTruth& truth, std::string_view kind, const std::vector<Seen>& seen);

// Sums over pages.
struct Tally {
  int upright = 0;        // terms on the pages
  int upright_found = 0;  // and of them found
  int turned = 0;
  int turned_found = 0;
  int false_seen = 0;
  int nets_seen = 0;   // other text that is the label of a net or rail
  int pins_seen = 0;   // the name or number of a pin
  int other_seen = 0;  // any other text that stands there

  void Add(const PageVerdict& verdict);

  int on_pages() const { return upright + turned; }
  int found() const { return upright_found + turned_found; }

  // 0 where there is nothing to divide by.
  double Recall() const;
  double UprightRecall() const;
  double TurnedRecall() const;
  // Of what was seen; text that stands on the page as something else counts neither for nor against.
  double Precision() const;
  // The same, with that text counted against.
  double StrictPrecision() const;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_SCORER_H_
