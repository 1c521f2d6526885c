// From chances along a strip to texts. Pure.

#ifndef BENCHLEAF_LETTERING_STEP_TEXTS_H_
#define BENCHLEAF_LETTERING_STEP_TEXTS_H_

#include "benchleaf/lettering/lettering_net.h"

#include <cstddef>
#include <string>
#include <vector>

namespace benchleaf {

struct StepText {
  std::vector<std::size_t> symbols;  // never the blank
  std::vector<std::size_t> steps;    // where each stands
  double log_chance = 0;             // of the whole text, over all ways in which the steps may spell it
};

// The likeliest texts, at most `most`, the likeliest first. A beam search over prefixes: what is read twice in
// succession without a blank between is one character (connectionist temporal classification; Graves and others, 2006,
// ICML; the search over prefixes: Hannun and others, 2014, arXiv 1408.2873).
std::vector<StepText> LikeliestTexts(const StepChances& chances, std::size_t most);

}  // namespace benchleaf

#endif  // BENCHLEAF_LETTERING_STEP_TEXTS_H_
