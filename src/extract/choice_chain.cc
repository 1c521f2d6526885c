#include "extract/choice_chain.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace benchleaf::extract {
namespace {

double LogOfSum(const std::vector<double>& logs) {
  double most = -std::numeric_limits<double>::infinity();
  for (const double one : logs) {
    most = std::max(most, one);
  }
  double sum = 0;
  for (const double one : logs) {
    sum += std::exp(one - most);
  }
  return most + std::log(sum);
}

}  // namespace

std::vector<std::vector<double>> ChancesInChain(const std::vector<std::vector<double>>& own, const ChainSteps& steps) {
  if (own.empty()) {
    return {};
  }
  std::vector<double> ways;
  std::vector<std::vector<double>> forward = own;
  for (std::size_t at = 1; at < own.size(); ++at) {
    for (std::size_t to = 0; to < own[at].size(); ++to) {
      ways.clear();
      for (std::size_t from = 0; from < own[at - 1].size(); ++from) {
        ways.push_back(forward[at - 1][from] + steps[at][from * own[at].size() + to]);
      }
      forward[at][to] += LogOfSum(ways);
    }
  }
  std::vector<std::vector<double>> chances = forward;
  std::vector<double> backward(own.back().size(), 0);
  for (std::size_t at = own.size(); at-- > 0;) {
    if (at + 1 < own.size()) {
      std::vector<double> here(own[at].size());
      for (std::size_t from = 0; from < own[at].size(); ++from) {
        ways.clear();
        for (std::size_t to = 0; to < own[at + 1].size(); ++to) {
          ways.push_back(steps[at + 1][from * own[at + 1].size() + to] + own[at + 1][to] + backward[to]);
        }
        here[from] = LogOfSum(ways);
      }
      backward = std::move(here);
    }
    for (std::size_t i = 0; i < chances[at].size(); ++i) {
      chances[at][i] += backward[i];
    }
    const double all = LogOfSum(chances[at]);
    for (double& chance : chances[at]) {
      chance = std::exp(chance - all);
    }
  }
  return chances;
}

}  // namespace benchleaf::extract
