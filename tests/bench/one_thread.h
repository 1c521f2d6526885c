// Benchmarks run on one thread and measure processor time, so that their figures hold on a busy machine.

#ifndef BENCHLEAF_TESTS_BENCH_ONE_THREAD_H_
#define BENCHLEAF_TESTS_BENCH_ONE_THREAD_H_

#include <ctime>

namespace benchleaf::bench {

// Starts the program anew with OMP_THREAD_LIMIT=1 unless it runs so already: OpenMP, which Debian's Tesseract is built
// with, reads it before main begins. Throws std::runtime_error when that fails.
void KeepToOneThread(char** argv);

// Processor time of this process. On an idle machine a program of one thread takes as much by the clock.
class Stopwatch {
 public:
  double Seconds() const { return static_cast<double>(std::clock() - start_) / CLOCKS_PER_SEC; }

 private:
  std::clock_t start_ = std::clock();
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_ONE_THREAD_H_
