// benchleaf from a page's picture to its terms, under the clock.

#ifndef BENCHLEAF_TESTS_BENCH_BENCHLEAF_READER_H_
#define BENCHLEAF_TESTS_BENCH_BENCHLEAF_READER_H_

#include "bench/page_seen.h"
#include "scan-maker/made_page.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/reading/page_reader.h"

#include <memory>

namespace benchleaf::bench {

class BenchleafReader {
 public:
  // Throws std::runtime_error with benchleaf's own message when it cannot start; so does See.
  explicit BenchleafReader(const PageSteps& steps = {});

  PageSeen See(const scanmaker::ScannedPage& page);
  // The two halves of See; the second takes no time.
  PageReading Read(const scanmaker::ScannedPage& page);
  PageSeen Extract(const PageReading& reading) const;

 private:
  std::unique_ptr<PageReader> reader_;
  std::shared_ptr<const Rules> rules_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_BENCHLEAF_READER_H_
