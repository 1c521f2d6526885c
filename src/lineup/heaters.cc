#include "benchleaf/lineup/heaters.h"

#include "benchleaf/core/figure.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

namespace benchleaf {
namespace {

// Series-string currents of United States receivers: 600 and 450 mA of television types with a controlled warm-up, 300
// mA of radio types of the 1930s, 150 mA of those from 1940 on. Common practice, no source.
constexpr std::array<double, 4> kStringAmps = {0.6, 0.45, 0.3, 0.15};
constexpr double kSameAmps = 0.02;         // of the current
constexpr double kNearlyAll = 0.8;         // of the heaters
constexpr std::size_t kFewestHeaters = 3;  // that tell anything

struct Heater {
  std::size_t tube = 0;
  std::vector<HeaterSupply> supplies;  // with both figures known
  bool rectifier = false;
};

bool Has(const TubeEntry& tube, std::string_view words) { return tube.tube_class.find(words) != std::string::npos; }

// The supply of the heater that draws the current; nothing when none does.
std::optional<CountedHeater> AtAmps(const Heater& heater, double amps) {
  for (const HeaterSupply& supply : heater.supplies) {
    if (std::abs(*supply.amps - amps) <= kSameAmps * amps) {
      return CountedHeater{heater.tube, *supply.volts, *supply.amps, heater.supplies.size() > 1};
    }
  }
  return std::nullopt;
}

HeaterString StringOf(const std::vector<Heater>& heaters, double amps) {
  HeaterString string;
  string.amps = amps;
  for (const Heater& heater : heaters) {
    if (const auto counted = AtAmps(heater, amps)) {
      string.volts += counted->volts;
      string.heaters.push_back(*counted);
    } else {
      const HeaterSupply& supply = heater.supplies.front();
      string.unequal.push_back({heater.tube, *supply.volts, *supply.amps, heater.supplies.size() > 1});
    }
  }
  return string;
}

// The string that most heaters are made for.
HeaterString BestString(const std::vector<Heater>& heaters) {
  HeaterString best;
  for (const double amps : kStringAmps) {
    HeaterString string = StringOf(heaters, amps);
    if (string.heaters.size() > best.heaters.size()) best = std::move(string);
  }
  return best;
}

// Of a heater that may be wired two ways, the voltage that the most single heaters have.
std::vector<HeaterGroup> GroupsOf(const std::vector<Heater>& heaters) {
  std::map<double, std::size_t> single;
  for (const Heater& heater : heaters) {
    if (heater.supplies.size() == 1) ++single[*heater.supplies.front().volts];
  }
  std::map<double, HeaterGroup> groups;
  for (const Heater& heater : heaters) {
    const auto best = std::max_element(
        heater.supplies.begin(), heater.supplies.end(), [&](const HeaterSupply& a, const HeaterSupply& b) {
          const auto count = [&](double volts) { return single.contains(volts) ? single.at(volts) : 0; };
          return count(*a.volts) < count(*b.volts);
        });
    HeaterGroup& group = groups[*best->volts];
    group.volts = *best->volts;
    group.amps += *best->amps;
    group.heaters.push_back({heater.tube, *best->volts, *best->amps, heater.supplies.size() > 1});
  }
  std::vector<HeaterGroup> sorted;
  sorted.reserve(groups.size());
  for (auto& [volts, group] : groups) sorted.push_back(std::move(group));
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const HeaterGroup& a, const HeaterGroup& b) { return a.heaters.size() > b.heaters.size(); });
  return sorted;
}

// Whether one voltage serves nearly all heaters but those of rectifiers, which often have a winding of their own.
bool ShareOneVoltage(const std::vector<HeaterGroup>& groups, const std::vector<Heater>& heaters) {
  std::size_t others = 0;
  std::size_t most = 0;
  for (const HeaterGroup& group : groups) {
    std::size_t here = 0;
    for (const CountedHeater& counted : group.heaters) {
      const auto heater =
          std::find_if(heaters.begin(), heaters.end(), [&](const Heater& one) { return one.tube == counted.tube; });
      here += heater->rectifier ? 0U : 1U;
    }
    most = std::max(most, here);
    others += here;
  }
  return static_cast<double>(most) >= kNearlyAll * static_cast<double>(others);
}

std::string Of(std::size_t some, std::size_t all) { return std::to_string(some) + " of " + std::to_string(all); }

void Decide(const std::vector<Heater>& heaters, HeaterSums& sums) {
  sums.groups = GroupsOf(heaters);
  HeaterString string = BestString(heaters);
  std::set<double> voltages;
  for (const CountedHeater& heater : string.heaters) voltages.insert(heater.volts);
  const std::string all_draw = Of(string.heaters.size(), heaters.size()) + " known heaters can draw " +
                               Figure(string.amps) + " A at " + std::to_string(voltages.size()) + " voltages";
  const bool may_be_string =
      static_cast<double>(string.heaters.size()) >= kNearlyAll * static_cast<double>(heaters.size()) &&
      voltages.size() > 1 && string.volts >= kLineVolts / 2;
  const bool may_be_parallel = ShareOneVoltage(sums.groups, heaters);
  if (heaters.size() < kFewestHeaters) {
    sums.reason = "too few heaters are known to tell how they are wired";
  } else if (may_be_parallel) {
    sums.wiring = HeaterWiring::kParallel;
    sums.reason = "nearly all heaters, those of rectifiers apart, can take " + Figure(sums.groups.front().volts) + " V";
  } else if (may_be_string) {
    sums.wiring = HeaterWiring::kSeries;
    sums.reason = all_draw;
    sums.groups.clear();
    sums.string = std::move(string);
  } else {
    sums.wiring = HeaterWiring::kUnclear;
    sums.reason = "the types fit neither one voltage nor one current: " + all_draw;
    if (string.heaters.size() >= kFewestHeaters) sums.string = std::move(string);
  }
}

}  // namespace

std::string_view Name(HeaterWiring wiring) {
  switch (wiring) {
    case HeaterWiring::kParallel:
      return "parallel";
    case HeaterWiring::kSeries:
      return "series";
    case HeaterWiring::kUnclear:
      return "unclear";
    case HeaterWiring::kUnknown:
      break;
  }
  return "unknown";
}

HeaterSums SumHeaters(const std::vector<const TubeEntry*>& tubes) {
  HeaterSums sums;
  std::vector<Heater> heaters;
  for (std::size_t i = 0; i < tubes.size(); ++i) {
    const TubeEntry* tube = tubes[i];
    if (tube == nullptr) {
      sums.not_known.push_back(i);
      continue;
    }
    if (tube->has_no_heater()) {
      sums.without_heater.push_back(i);
      continue;
    }
    if (Has(*tube, "high-voltage rectifier")) {
      sums.high_voltage.push_back(i);
      continue;
    }
    Heater heater{i, {}, Has(*tube, "rectifier")};
    for (const HeaterSupply& supply : tube->heater) {
      if (supply.volts && supply.amps) heater.supplies.push_back(supply);
    }
    if (heater.supplies.empty()) {
      sums.not_known.push_back(i);
    } else {
      heaters.push_back(std::move(heater));
    }
  }
  Decide(heaters, sums);
  return sums;
}

}  // namespace benchleaf
