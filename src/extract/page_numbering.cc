#include "extract/page_numbering.h"

#include "extract/designator.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
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

// The sightings of one class, each found by its number.
class NumberedClass {
 public:
  NumberedClass(const std::vector<Numbered>& all, const std::vector<PageTerm>& terms) : terms_(terms) {
    for (const Numbered& one : all) {
      double& surest = surest_[one.number];
      surest = std::max(surest, terms_[one.term].confidence);
      std::pair<double, double>& same = same_[{one.number, one.suffix}];
      const double confidence = terms_[one.term].confidence;
      if (confidence > same.first) {
        same = {confidence, same.first};
      } else {
        same.second = std::max(same.second, confidence);
      }
    }
  }

  Neighbours NeighboursOf(const Numbered& own) const {
    const auto at = [&](int distance) {
      const auto found = surest_.find(own.number + distance);
      return found == surest_.end() ? 0 : found->second;
    };
    const auto& [first, second] = same_.at({own.number, own.suffix});
    return {at(1) + at(-1), at(2) + at(-2), terms_[own.term].confidence == first ? second : first};
  }

 private:
  const std::vector<PageTerm>& terms_;
  std::map<int, double> surest_;
  std::map<std::pair<int, std::string>, std::pair<double, double>> same_;  // the surest two of a designator
};

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
    const NumberedClass numbers(numbered, terms);
    for (const Numbered& own : numbered) {
      weighed.emplace_back(own.term, After(terms[own.term].confidence, numbers.NeighboursOf(own)));
    }
  }
  for (const auto& [term, confidence] : weighed) {
    terms[term].confidence = confidence;
  }
}

}  // namespace benchleaf::extract
