// Tesseract as it comes, on the whole page: what benchleaf is measured against.

#ifndef BENCHLEAF_TESTS_BENCH_BARE_TESSERACT_H_
#define BENCHLEAF_TESTS_BENCH_BARE_TESSERACT_H_

#include "bench/page_seen.h"
#include "scan-maker/made_page.h"

#include <memory>
#include <vector>

namespace benchleaf::bench {

class BareTesseract {
 public:
  // Throws std::runtime_error when the English data is not installed.
  BareTesseract();
  ~BareTesseract();
  BareTesseract(const BareTesseract&) = delete;
  BareTesseract& operator=(const BareTesseract&) = delete;

  // Words in page segmentation mode 11 (sparse text): upper case, cut at blanks, without the punctuation round them.
  // Its terms are those that have a term's plain form. Throws std::runtime_error when Tesseract fails.
  PageSeen See(const scanmaker::ScannedPage& page);

 private:
  std::vector<Seen> Read(const GreyImage& image, double dpi);

  struct Engine;
  std::unique_ptr<Engine> engine_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_BARE_TESSERACT_H_
