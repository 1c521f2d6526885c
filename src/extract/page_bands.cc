#include "extract/page_bands.h"

#include <algorithm>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kThingsOfBand = 4;
constexpr std::size_t kMostBands = 4096;

}  // namespace

PageBands::PageBands(double height, std::size_t count)
    : band_height_(0), bands_(std::clamp<std::size_t>(count / kThingsOfBand, 1, kMostBands)) {
  band_height_ = height > 0 ? height / static_cast<double>(bands_.size()) : 1;
}

std::size_t PageBands::BandAt(double y) const {
  const double last = static_cast<double>(bands_.size() - 1);
  return static_cast<std::size_t>(std::clamp(y / band_height_, 0.0, last));
}

void PageBands::Add(std::size_t number, double top, double bottom) {
  if (number >= covered_.size()) {
    covered_.resize(number + 1);
  }
  auto& [first, end] = covered_[number];
  const std::size_t from = BandAt(top);
  const std::size_t to = BandAt(std::max(top, bottom)) + 1;
  if (first == end) {  // it is new
    first = from;
    end = from;
  }
  for (; first > from; --first) {
    bands_[first - 1].push_back(number);
  }
  for (; end < to; ++end) {
    bands_[end].push_back(number);
  }
}

std::vector<std::size_t> PageBands::Beside(double top, double bottom) const {
  std::vector<std::size_t> beside;
  Beside(top, bottom, beside);
  return beside;
}

void PageBands::Beside(double top, double bottom, std::vector<std::size_t>& beside) const {
  beside.clear();
  const std::size_t last = BandAt(std::max(top, bottom));
  for (std::size_t band = BandAt(top); band <= last; ++band) {
    beside.insert(beside.end(), bands_[band].begin(), bands_[band].end());
  }
  std::sort(beside.begin(), beside.end());
  beside.erase(std::unique(beside.begin(), beside.end()), beside.end());
}

}  // namespace benchleaf::extract
