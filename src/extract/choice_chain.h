// A row of choices of which each depends on the one before: which designator each row of a list has.

#ifndef BENCHLEAF_SRC_EXTRACT_CHOICE_CHAIN_H_
#define BENCHLEAF_SRC_EXTRACT_CHOICE_CHAIN_H_

#include <cstddef>
#include <functional>
#include <vector>

namespace benchleaf::extract {

// Natural logarithm of how likely choice `to` of place `at` is behind choice `from` of the place before it.
using Step = std::function<double(std::size_t at, std::size_t from, std::size_t to)>;

// The chance of every choice at every place, given all places together (forward and backward sums over the chain).
// `own` has, for each place, the natural logarithm of how well each of its choices fits that place alone.
// REQUIRES: a choice at least at every place.
std::vector<std::vector<double>> ChancesInChain(const std::vector<std::vector<double>>& own, const Step& step);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_CHOICE_CHAIN_H_
