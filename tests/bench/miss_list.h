// A list of what went wrong, to look into.

#ifndef BENCHLEAF_TESTS_BENCH_MISS_LIST_H_
#define BENCHLEAF_TESTS_BENCH_MISS_LIST_H_

#include "bench/scorer.h"

#include <fstream>
#include <string>
#include <vector>

namespace benchleaf::bench {

struct MissPlace {
  std::string grade;
  std::string reader;
  std::string sheet;
};

// TSV: grade, reader, sheet, what ("missed", "false", "other"), text, turn, box as fractions, words read there.
class MissList {
 public:
  // An empty path keeps no list. Throws std::runtime_error when the file cannot be written.
  explicit MissList(const std::string& path);

  void Add(const MissPlace& place, const PageVerdict& verdict, const std::vector<Seen>& words);

 private:
  std::ofstream file_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_MISS_LIST_H_
