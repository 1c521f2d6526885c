#include "extract/numbering_steps.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace benchleaf::extract {
namespace {

// What is believed of a list before its rows are seen: as if so many rows had been counted.
constexpr double kRowsBelieved = 3;
constexpr double kUsuallyNext = 0.7;
constexpr double kSeldomBack = 0.01;
constexpr double kSeldomOtherClass = 0.12;
constexpr double kUnknownClass = 0.03;  // share of a class that no sure row has

constexpr double kNewAssembly = -1;  // the numbers begin anew
constexpr double kNextSection = -0.5;
constexpr double kTwice = -7;  // no part is listed twice
// Numbers further on are ever less likely: about the inverse of the distance, as lists with holes have them.
double Farther(int distance) { return std::log(0.4) - 1.3 * std::log(std::max(1, distance)); }

double Learned(double count, double of, double believed) {
  return (count + believed * kRowsBelieved) / (of + kRowsBelieved);
}

// XV1 behind V1: the socket of the part above.
bool HoldsTheOther(const Designator& above, const Designator& below) {
  return "X" + above.letters == below.letters || "X" + below.letters == above.letters;
}

}  // namespace

NumberingSteps::NumberingSteps(const std::vector<std::pair<RowName, RowName>>& pairs) {
  double steps = 0;
  double within = 0;
  double next = 0;
  double back = 0;
  std::map<std::string, double> rows;
  for (const auto& [above, below] : pairs) {
    rows[below.designator.letters] += 1;
    if (above.assembly != below.assembly) {
      continue;
    }
    steps += 1;
    if (above.designator.letters != below.designator.letters) {
      continue;
    }
    within += 1;
    const int distance = NumberOf(below.designator) - NumberOf(above.designator);
    next += distance == 1 ? 1 : 0;
    back += distance < 0 ? 1 : 0;
  }
  next_ = Learned(next, within, kUsuallyNext);
  back_ = Learned(back, within, kSeldomBack);
  other_class_ = Learned(steps - within, steps, kSeldomOtherClass);
  for (const auto& [letters, count] : rows) {
    class_share_[letters] = (count + 0.5) / (static_cast<double>(pairs.size()) + 3);
  }
}

double NumberingSteps::WithinClass(const Designator& above, const Designator& below) const {
  const int distance = NumberOf(below) - NumberOf(above);
  if (distance == 0) {
    const bool section = !below.suffix.empty() && below.suffix > above.suffix;
    return section ? kNextSection : kTwice;
  }
  if (distance < 0) {
    return std::log(back_) + Farther(-distance);
  }
  const double ahead = std::max(0.01, 1 - next_ - back_);
  return distance == 1 ? std::log(next_ + 0.4 * ahead) : std::log(ahead) + Farther(distance);
}

double NumberingSteps::ToOtherClass(const Designator& above, const Designator& below) const {
  if (HoldsTheOther(above, below)) {
    const int distance = NumberOf(below) - NumberOf(above);
    return std::log(other_class_) + (distance == 0 || distance == 1 ? std::log(0.5) : Farther(std::abs(distance)));
  }
  const auto share = class_share_.find(below.letters);
  // A class begins at its lowest number: 1, 101 or 201 more often than 37.
  const int number = NumberOf(below) % 100;
  return std::log(other_class_) + std::log(share == class_share_.end() ? kUnknownClass : share->second) +
         std::log(0.5) - 0.5 * std::log(std::max(1, number)) - (NumberOf(below) >= 100 ? 1 : 0);
}

double NumberingSteps::Likeliness(const RowName& above, const RowName& below) const {
  if (above.assembly != below.assembly) {
    const auto share = class_share_.find(below.designator.letters);
    return kNewAssembly + std::log(share == class_share_.end() ? kUnknownClass : share->second) -
           0.5 * std::log(std::max(1, NumberOf(below.designator)));
  }
  return above.designator.letters == below.designator.letters
             ? std::log(1 - other_class_) + WithinClass(above.designator, below.designator)
             : ToOtherClass(above.designator, below.designator);
}

}  // namespace benchleaf::extract
