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
  const auto holds = [](std::string_view socket, std::string_view part) {
    return socket.size() == part.size() + 1 && socket.front() == 'X' && socket.substr(1) == part;
  };
  return holds(below.letters, above.letters) || holds(above.letters, below.letters);
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
  const double is_next = Learned(next, within, kUsuallyNext);
  const double is_back = Learned(back, within, kSeldomBack);
  const double is_ahead = std::max(0.01, 1 - is_next - is_back);
  const double is_other_class = Learned(steps - within, steps, kSeldomOtherClass);
  next_ = std::log(is_next + 0.4 * is_ahead);
  back_ = std::log(is_back);
  ahead_ = std::log(is_ahead);
  other_class_ = std::log(is_other_class);
  same_class_ = std::log(1 - is_other_class);
  for (const auto& [letters, count] : rows) {
    log_class_share_[letters] = std::log((count + 0.5) / (static_cast<double>(pairs.size()) + 3));
  }
}

double NumberingSteps::LogOfShare(const std::string& letters) const {
  static const double kOfUnknown = std::log(kUnknownClass);
  const auto share = log_class_share_.find(letters);
  return share == log_class_share_.end() ? kOfUnknown : share->second;
}

double NumberingSteps::WithinClass(const Designator& above, const Designator& below) const {
  const int distance = NumberOf(below) - NumberOf(above);
  if (distance == 0) {
    const bool section = !below.suffix.empty() && below.suffix > above.suffix;
    return section ? kNextSection : kTwice;
  }
  if (distance < 0) {
    return back_ + Farther(-distance);
  }
  return distance == 1 ? next_ : ahead_ + Farther(distance);
}

double NumberingSteps::ToOtherClass(const Designator& above, const Designator& below) const {
  if (HoldsTheOther(above, below)) {
    const int distance = NumberOf(below) - NumberOf(above);
    return other_class_ + (distance == 0 || distance == 1 ? std::log(0.5) : Farther(std::abs(distance)));
  }
  // A class begins at its lowest number: 1, 101 or 201 more often than 37.
  const int number = NumberOf(below);
  return other_class_ + LogOfShare(below.letters) + std::log(0.5) - 0.5 * std::log(std::max(1, number % 100)) -
         (number >= 100 ? 1 : 0);
}

double NumberingSteps::Likeliness(const RowName& above, const RowName& below) const {
  if (above.assembly != below.assembly) {
    return kNewAssembly + LogOfShare(below.designator.letters) -
           0.5 * std::log(std::max(1, NumberOf(below.designator)));
  }
  return above.designator.letters == below.designator.letters
             ? same_class_ + WithinClass(above.designator, below.designator)
             : ToOtherClass(above.designator, below.designator);
}

}  // namespace benchleaf::extract
