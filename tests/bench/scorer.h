// Judges what a reader saw on a page against what stands there.

#ifndef BENCHLEAF_TESTS_BENCH_SCORER_H_
#define BENCHLEAF_TESTS_BENCH_SCORER_H_

#include "scan-maker/truth.h"

#include "benchleaf/core/geometry.h"

#include <string>
#include <vector>

namespace benchleaf::bench {

// A word or term as a reader gave it.
struct Seen {
  std::string text;  // canonical: upper case, no spaces
  FractionBox box;   // of the page as scanned
  double confidence = 0;
};

// One designator of the page, found or not.
struct TruthVerdict {
  scanmaker::TruthTerm term;
  bool found = false;
};

enum class Judgement {
  kRight,      // a designator of the page, text and place
  kOtherText,  // no designator, but exactly this stands there (a net name, a pin's name, a value)
  kFalse,      // neither, or the same designator a second time
};

struct SeenVerdict {
  Seen seen;
  Judgement judgement = Judgement::kFalse;
};

struct PageVerdict {
  std::vector<TruthVerdict> truth;
  std::vector<SeenVerdict> seen;
};

// Texts must be equal and the boxes must overlap by 30 % of the smaller one; each sighting counts for one designator
// and each designator for one sighting, those that fit best first.
PageVerdict JudgeDesignators(const scanmaker::PageTruth& truth, const std::vector<Seen>& seen);

// Sums over pages.
struct Tally {
  int upright = 0;        // designators on the pages
  int upright_found = 0;  // and of them found
  int turned = 0;
  int turned_found = 0;
  int false_seen = 0;
  int other_text = 0;
  int pages = 0;
  double seconds = 0;

  void Add(const PageVerdict& verdict, double page_seconds);

  // 0 where there is nothing to divide by.
  double Recall() const;
  double UprightRecall() const;
  double TurnedRecall() const;
  double Precision() const;  // sightings of other text count neither for nor against
  double SecondsPerPage() const;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_SCORER_H_
