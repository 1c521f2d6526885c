// Tesseract as it comes, on the whole page: what benchleaf is measured against.

#ifndef BENCHLEAF_TESTS_BENCH_BARE_TESSERACT_H_
#define BENCHLEAF_TESTS_BENCH_BARE_TESSERACT_H_

#include "bench/scorer.h"

#include "benchleaf/core/image.h"

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

  // The words of the page, in page segmentation mode 11 (sparse text): upper case, cut at blanks, without the
  // punctuation round them.
  std::vector<Seen> Read(const GreyImage& image, double dpi);

 private:
  struct Engine;
  std::unique_ptr<Engine> engine_;
};

// Of these the ones that have the form of a designator.
std::vector<Seen> DesignatorsAmong(const std::vector<Seen>& words);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_BARE_TESSERACT_H_
