// A small convolutional net that tells from a strip of lettering which characters stand along it. Trained from nothing
// on made pages (tests/reader-training/train.sh).

#ifndef BENCHLEAF_LETTERING_LETTERING_NET_H_
#define BENCHLEAF_LETTERING_LETTERING_NET_H_

#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace benchleaf {

inline constexpr int kStepPx = 4;  // columns of a strip to a step

// How likely each symbol is at each step along a strip, from its left. Symbol 0 is the blank, which stands between
// characters and round them; symbol n is character n - 1.
struct StepChances {
  std::size_t steps = 0;
  std::size_t symbols = 0;
  std::vector<float> log_chances;  // natural logarithms, steps x symbols

  float at(std::size_t step, std::size_t symbol) const { return log_chances[step * symbols + symbol]; }
};

// Not safe for use by several threads.
class LetteringNet {
 public:
  // Fails with kMissing when the file is not there or is no net.
  static Result<std::unique_ptr<LetteringNet>> Load(const std::filesystem::path& file);
  ~LetteringNet();
  LetteringNet(const LetteringNet&) = delete;
  LetteringNet& operator=(const LetteringNet&) = delete;

  const std::vector<std::string>& characters() const;  // UTF-8

  // `strip` has kStripRows rows (line_strip.h). A step for every kStepPx columns begun.
  StepChances Run(const GreyImage& strip);

 private:
  class Impl;
  explicit LetteringNet(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_LETTERING_LETTERING_NET_H_
