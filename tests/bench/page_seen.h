// What a reader made of one page.

#ifndef BENCHLEAF_TESTS_BENCH_PAGE_SEEN_H_
#define BENCHLEAF_TESTS_BENCH_PAGE_SEEN_H_

#include "bench/scorer.h"

#include "benchleaf/extract/sighting.h"

#include <map>
#include <string>
#include <vector>

namespace benchleaf::bench {

struct PageSeen {
  std::vector<Seen> words;                         // all of them
  std::map<std::string, std::vector<Seen>> terms;  // by kind: "designator", "tube", "part-number"
  std::vector<Entry> entries;                      // rows of a parts list; none from bare Tesseract
  double seconds = 0;                              // of processor time
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_PAGE_SEEN_H_
