// A list of what was missed and seen, to look into.

#ifndef BENCHLEAF_TESTS_BENCH_VERDICT_LIST_H_
#define BENCHLEAF_TESTS_BENCH_VERDICT_LIST_H_

#include "bench/scorer.h"

#include <fstream>
#include <string>
#include <vector>

namespace benchleaf::bench {

struct VerdictPlace {
  std::string grade;
  std::string reader;
  std::string sheet;
  std::string kind;
};

// TSV: grade, reader, sheet, kind of the term, what ("missed", "right", "false", or the kind of other text that stands
// there: "net", "pin", "value"), text, turn of what was missed, confidence of what was seen, box as fractions, words
// read there.
class VerdictList {
 public:
  // An empty path keeps no list. Throws std::runtime_error when the file cannot be written.
  explicit VerdictList(const std::string& path);

  void Add(const VerdictPlace& place, const PageVerdict& verdict, const std::vector<Seen>& words);

 private:
  std::ofstream file_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_VERDICT_LIST_H_
