// Judges the rows that a reader took from a parts list.

#ifndef BENCHLEAF_TESTS_BENCH_ENTRY_SCORER_H_
#define BENCHLEAF_TESTS_BENCH_ENTRY_SCORER_H_

#include "scan-maker/truth.h"

#include "benchleaf/extract/sighting.h"

#include <vector>

namespace benchleaf::bench {

// Sums over pages. An entry is right when assembly, designator and part number are all those of a row of the page; each
// row counts once. Blanks within a part number and small letters are no difference. Rows without a designator are known
// by their part number alone.
struct EntryTally {
  int listed = 0;  // parts that the pages list
  int read = 0;    // entries that were read
  int right = 0;
  int listed_designators = 0;
  int right_designator = 0;  // entries whose assembly and designator alone are right

  void Add(const std::vector<scanmaker::TruthEntry>& truth, const std::vector<Entry>& entries);

  // 0 where there is nothing to divide by.
  double Recall() const;
  double Precision() const;
  double DesignatorRecall() const;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_ENTRY_SCORER_H_
