#include "extract/page_numbering.h"

#include "extract/designator.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <map>
#include <string>
#include <utility>

namespace benchleaf::extract {
namespace {

struct Numbered {
  std::size_t term = 0;
  int number = 0;
  std::string suffix;
};

// The surest sighting of each number next to one, and of the same designator elsewhere.
struct Neighbours {
  double next = 0;  // sum over the numbers just above and below
  double next_but_one = 0;
  double same = 0;
};

Neighbours NeighboursOf(const Numbered& own, const std::vector<Numbered>& all, const std::vector<PageTerm>& terms) {
  std::map<int, double> sure;  // by distance
  Neighbours neighbours;
  for (const Numbered& other : all) {
    const double confidence = terms[other.term].confidence;
    const int distance = other.number - own.number;
    if (other.term == own.term || std::abs(distance) > 2) {
      continue;
    }
    if (distance != 0) {
      sure[distance] = std::max(sure[distance], confidence);
    } else if (other.suffix == own.suffix) {
      neighbours.same = std::max(neighbours.same, confidence);
    }
  }
  neighbours.next = sure[1] + sure[-1];
  neighbours.next_but_one = sure[2] + sure[-2];
  return neighbours;
}

// Weights of a logistic regression on the designators read on the sheets of `bench_outside --half dev` and `practice`
// at all grades.
double After(double confidence, const Neighbours& neighbours) {
  constexpr double kAlways = -0.44;
  constexpr double kNext = 0.6;
  constexpr double kNextButOne = 0.37;
  constexpr double kSame = -2.7;
  const double before = std::clamp(confidence, 0.02, 0.985);
  const double odds = std::log(before / (1 - before)) + kAlways + kNext * neighbours.next +
                      kNextButOne * neighbours.next_but_one + kSame * neighbours.same;
  return 1 / (1 + std::exp(-odds));
}

}  // namespace

void WeighByNumbering(std::vector<PageTerm>& terms, const Rules::Tables& tables) {
  std::map<std::pair<std::string, std::string>, std::vector<Numbered>> classes;  // by assembly and letters
  for (std::size_t i = 0; i < terms.size(); ++i) {
    const auto designator =
        terms[i].term.kind == TermKind::kDesignator ? ParseDesignator(terms[i].term.text, tables) : std::nullopt;
    if (designator) {
      classes[{designator->assembly, designator->letters}].push_back(
          {i, std::stoi(designator->number), designator->suffix});
    }
  }
  std::vector<std::pair<std::size_t, double>> weighed;
  for (const auto& [name, numbered] : classes) {
    for (const Numbered& own : numbered) {
      weighed.emplace_back(own.term, After(terms[own.term].confidence, NeighboursOf(own, numbered, terms)));
    }
  }
  for (const auto& [term, confidence] : weighed) {
    terms[term].confidence = confidence;
  }
}

}  // namespace benchleaf::extract
