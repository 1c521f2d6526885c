// What a bench measured, as a table to read and as JSON for scripts.

#ifndef BENCHLEAF_TESTS_BENCH_FIGURES_H_
#define BENCHLEAF_TESTS_BENCH_FIGURES_H_

#include "bench/entry_scorer.h"
#include "bench/reliability.h"
#include "bench/scorer.h"

#include <string>
#include <vector>

namespace benchleaf::bench {

// Of one kind of term: "designator", "tube", "part-number".
struct KindFigures {
  std::string kind;
  Tally tally;
};

// Of one reader at one grade.
struct ReaderFigures {
  std::string grade;
  std::string reader;
  int pages = 0;
  double seconds = 0;  // of processor time, all pages
  std::vector<KindFigures> kinds;
  Reliability reliability;  // of designators
  bool states_confidence = false;
  EntryTally entries;

  double SecondsPerPage() const { return pages == 0 ? 0 : seconds / pages; }
  // 0 when the kind was not judged.
  double Recall(const std::string& kind) const;
};

// The head of the table, with a legend.
std::string TableHead();

// A line a kind that stands on the pages, and one for the rows of parts lists where there are any.
std::string TableLines(const ReaderFigures& figures);

// One page in one line: how many of each kind stand there, recall/precision of each, and of whole rows.
std::string PageLine(const std::string& page, const ReaderFigures& figures);

// How `figures` compare with `bare`; empty when `bare` found no designator.
std::string RatioLine(const ReaderFigures& figures, const ReaderFigures& bare);

// A reliability diagram: a line a bin in which something was seen, and the expected calibration error.
std::string ReliabilityLines(const Reliability& reliability);

// All of them as one JSON array, an object a reader and grade.
std::string ToJson(const std::vector<ReaderFigures>& all);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_FIGURES_H_
