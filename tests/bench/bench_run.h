// What the benchmarks share: reading a page with benchleaf under the clock, and running every reader on one thread.

#ifndef BENCHLEAF_TESTS_BENCH_BENCH_RUN_H_
#define BENCHLEAF_TESTS_BENCH_BENCH_RUN_H_

#include "bench/scorer.h"
#include "scan-maker/made_page.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/reading/page_reader.h"

#include <chrono>
#include <memory>
#include <vector>

namespace benchleaf::bench {

// Starts the program anew with OMP_THREAD_LIMIT=1 unless it runs so already: OpenMP, which Debian's Tesseract is built
// with, reads it before main begins.
void KeepToOneThread(char** argv);

class Stopwatch {
 public:
  double Seconds() const { return std::chrono::duration<double>(std::chrono::steady_clock::now() - start_).count(); }

 private:
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

// What a reader made of one page.
struct PageSeen {
  std::vector<Seen> words;        // all of them
  std::vector<Seen> designators;  // terms that it takes for designators
  double seconds = 0;
};

// benchleaf, from the picture to the sightings. Throws std::runtime_error with benchleaf's own message on failure.
class Benchleaf {
 public:
  Benchleaf();

  PageReading Read(const scanmaker::ScannedPage& page);
  PageSeen See(const scanmaker::ScannedPage& page);
  const Rules& rules() const { return *rules_; }

 private:
  std::unique_ptr<PageReader> reader_;
  std::shared_ptr<const Rules> rules_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_BENCH_RUN_H_
