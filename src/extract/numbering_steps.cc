#include "extract/numbering_steps.h"

#include <algorithm>
#include <array>
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
double FreshFarther(int distance) { return std::log(0.4) - 1.3 * std::log(std::max(1, distance)); }

// The same from a table: asked for every two names that rows one below the other may have.
double Farther(int distance) {
  constexpr std::size_t kMostKnown = 512;
  static const std::array<double, kMostKnown> kKnown = [] {
    std::array<double, kMostKnown> known{};
    for (std::size_t i = 0; i < kMostKnown; ++i) {
      known[i] = FreshFarther(static_cast<int>(i));
    }
    return known;
  }();
  const auto place = static_cast<std::size_t>(distance);
  return place < kMostKnown ? kKnown[place] : FreshFarther(distance);
}

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

StepEnd NumberingSteps::EndAt(const RowName& name) const {
  const int number = NumberOf(name.designator);
  const double share = LogOfShare(name.designator.letters);
  // A class begins at its lowest number: 1, 101 or 201 more often than 37.
  const double begins_class =
      other_class_ + share + std::log(0.5) - 0.5 * std::log(std::max(1, number % 100)) - (number >= 100 ? 1 : 0);
  return {name, number, begins_class, kNewAssembly + share - 0.5 * std::log(std::max(1, number))};
}

double NumberingSteps::WithinClass(const StepEnd& above, const StepEnd& below) const {
  const int distance = below.number - above.number;
  if (distance == 0) {
    const std::string& suffix = below.name.designator.suffix;
    const bool section = !suffix.empty() && suffix > above.name.designator.suffix;
    return section ? kNextSection : kTwice;
  }
  if (distance < 0) {
    return back_ + Farther(-distance);
  }
  return distance == 1 ? next_ : ahead_ + Farther(distance);
}

double NumberingSteps::ToOtherClass(const StepEnd& above, const StepEnd& below) const {
  if (HoldsTheOther(above.name.designator, below.name.designator)) {
    const int distance = below.number - above.number;
    return other_class_ + (distance == 0 || distance == 1 ? std::log(0.5) : Farther(std::abs(distance)));
  }
  return below.begins_class;
}

double NumberingSteps::Likeliness(const StepEnd& above, const StepEnd& below) const {
  if (above.name.assembly != below.name.assembly) {
    return below.begins_assembly;
  }
  return above.name.designator.letters == below.name.designator.letters ? same_class_ + WithinClass(above, below)
                                                                        : ToOtherClass(above, below);
}

}  // namespace benchleaf::extract
