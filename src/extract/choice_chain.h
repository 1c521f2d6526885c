// A row of choices of which each depends on the one before: which designator each row of a list has.

#ifndef BENCHLEAF_SRC_EXTRACT_CHOICE_CHAIN_H_
#define BENCHLEAF_SRC_EXTRACT_CHOICE_CHAIN_H_

#include <cstddef>
#include <vector>

namespace benchleaf::extract {

// Natural logarithms, for each place of how likely each of its choices (`to`) is behind each of the place before it
// (`from`): by `from` and then `to`. The first place has none.
using ChainSteps = std::vector<std::vector<double>>;

// The chance of every choice at every place, given all places together (forward and backward sums over the chain).
// `own` has, for each place, the natural logarithm of how well each of its choices fits that place alone.
// REQUIRES: a choice at least at every place.
std::vector<std::vector<double>> ChancesInChain(const std::vector<std::vector<double>>& own, const ChainSteps& steps);

// The same where step(at, from, to) tells a step: asked once of each.
template <class Step>
std::vector<std::vector<double>> ChancesInChain(const std::vector<std::vector<double>>& own, const Step& step) {
  ChainSteps steps(own.size());
  for (std::size_t at = 1; at < own.size(); ++at) {
    steps[at].reserve(own[at - 1].size() * own[at].size());
    for (std::size_t from = 0; from < own[at - 1].size(); ++from) {
      for (std::size_t to = 0; to < own[at].size(); ++to) {
        steps[at].push_back(step(at, from, to));
      }
    }
  }
  return ChancesInChain(own, steps);
}

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_CHOICE_CHAIN_H_
