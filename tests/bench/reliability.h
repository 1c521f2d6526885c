// How far a reader's stated confidence can be believed.

#ifndef BENCHLEAF_TESTS_BENCH_RELIABILITY_H_
#define BENCHLEAF_TESTS_BENCH_RELIABILITY_H_

#include "bench/scorer.h"

#include <array>
#include <cstddef>

namespace benchleaf::bench {

// Sightings by stated confidence. Text that stands on the page as something else is left out: what is asked of a
// confidence is whether the text is read rightly.
class Reliability {
 public:
  static constexpr std::size_t kBins = 10;  // 0 to 0.1, 0.1 to 0.2, up to 0.9 to 1

  struct Bin {
    int seen = 0;
    int right = 0;
    double stated_sum = 0;

    // 0 where nothing was seen.
    double Stated() const { return seen == 0 ? 0 : stated_sum / seen; }
    double Right() const { return seen == 0 ? 0 : static_cast<double>(right) / seen; }
  };

  void Add(const PageVerdict& verdict);
  void Add(const Reliability& other);

  const std::array<Bin, kBins>& bins() const { return bins_; }
  int seen() const;

  // The mean difference of stated confidence and share of right sightings over the bins, each weighted by its
  // sightings; 0 when nothing was seen. (M. Pakdaman Naeini, G. Cooper, M. Hauskrecht, Obtaining well calibrated
  // probabilities using Bayesian binning, AAAI 2015.)
  double ExpectedCalibrationError() const;

 private:
  std::array<Bin, kBins> bins_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_RELIABILITY_H_
