#include "bench/reliability.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace benchleaf::bench {

void Reliability::Add(const PageVerdict& verdict) {
  for (const SeenVerdict& one : verdict.seen) {
    if (one.judgement == Judgement::kOtherText) {
      continue;
    }
    const double stated = std::clamp(one.seen.confidence, 0.0, 1.0);
    Bin& bin = bins_[std::min(kBins - 1, static_cast<std::size_t>(stated * kBins))];
    ++bin.seen;
    bin.right += one.judgement == Judgement::kRight ? 1 : 0;
    bin.stated_sum += stated;
  }
}

void Reliability::Add(const Reliability& other) {
  for (std::size_t i = 0; i < kBins; ++i) {
    bins_[i].seen += other.bins_[i].seen;
    bins_[i].right += other.bins_[i].right;
    bins_[i].stated_sum += other.bins_[i].stated_sum;
  }
}

int Reliability::seen() const {
  return std::accumulate(bins_.begin(), bins_.end(), 0, [](int sum, const Bin& bin) { return sum + bin.seen; });
}

double Reliability::ExpectedCalibrationError() const {
  const double off = std::accumulate(bins_.begin(), bins_.end(), 0.0, [](double sum, const Bin& bin) {
    return sum + bin.seen * std::abs(bin.Stated() - bin.Right());
  });
  return seen() == 0 ? 0 : off / seen();
}

}  // namespace benchleaf::bench
