// Keeps degraded pages as files, to look at them.

#ifndef BENCHLEAF_TESTS_BENCH_PAGE_DUMP_H_
#define BENCHLEAF_TESTS_BENCH_PAGE_DUMP_H_

#include "scan-maker/made_page.h"

#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf::bench {

// Writes each page as GRADE-NAME.png and all truth as truth.jsonl.
class PageDump {
 public:
  // An empty folder keeps nothing; the folder is made when it is missing.
  explicit PageDump(const std::filesystem::path& folder);

  // Throws std::runtime_error when a file cannot be written.
  void Add(const std::string& grade, const scanmaker::ScannedPage& page);

 private:
  std::filesystem::path folder_;
  std::vector<scanmaker::PageTruth> truth_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_PAGE_DUMP_H_
