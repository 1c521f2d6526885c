// benchleaf from a page's picture to its terms, under the clock.

#ifndef BENCHLEAF_TESTS_BENCH_BENCHLEAF_READER_H_
#define BENCHLEAF_TESTS_BENCH_BENCHLEAF_READER_H_

#include "bench/one_thread.h"
#include "bench/scorer.h"
#include "scan-maker/made_page.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/extract/sighting.h"
#include "benchleaf/reading/page_reader.h"

#include <memory>
#include <vector>

namespace benchleaf::bench {

// What a reader made of one page.
struct PageSeen {
  std::vector<Seen> words;        // all of them
  std::vector<Seen> designators;  // terms that it takes for designators
  std::vector<Entry> entries;     // rows of a parts list; none from bare Tesseract
  double seconds = 0;
};

class BenchleafReader {
 public:
  // Throws std::runtime_error with benchleaf's own message when it cannot start; so does See.
  BenchleafReader();

  PageSeen See(const scanmaker::ScannedPage& page);

 private:
  std::unique_ptr<PageReader> reader_;
  std::shared_ptr<const Rules> rules_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_BENCHLEAF_READER_H_
