// What the heaters of a set's tubes draw, and whether they are wired side by side or in a string.

#ifndef BENCHLEAF_LINEUP_HEATERS_H_
#define BENCHLEAF_LINEUP_HEATERS_H_

#include "benchleaf/tubes/tube_table.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf {

enum class HeaterWiring {
  kUnknown,   // too few heaters are known to tell
  kParallel,  // side by side on windings
  kSeries,    // in a string across the line
  kUnclear,   // the types fit neither wholly: both sums are given
};
// "parallel", "series", ...
std::string_view Name(HeaterWiring wiring);

// A heater that is counted, at the supply that it is counted at.
struct CountedHeater {
  std::size_t tube = 0;  // position among the tubes that were given
  double volts = 0;
  double amps = 0;
  bool one_of_two = false;  // the heater may be wired two ways: this is the one that fits the others

  friend bool operator==(const CountedHeater&, const CountedHeater&) = default;
};

// Heaters side by side on one voltage.
struct HeaterGroup {
  double volts = 0;
  double amps = 0;  // the sum
  std::vector<CountedHeater> heaters;
};

struct HeaterString {
  double amps = 0;   // that the tubes are made for
  double volts = 0;  // the sum
  std::vector<CountedHeater> heaters;
  std::vector<CountedHeater> unequal;  // draw another current, and are not in the sum
};

// Positions are those of the tubes that were given.
struct HeaterSums {
  HeaterWiring wiring = HeaterWiring::kUnknown;
  std::string reason;                       // why, in words
  std::vector<HeaterGroup> groups;          // by voltage, the one of most heaters first; empty for a series string
  std::optional<HeaterString> string;       // nothing for parallel heaters
  std::vector<std::size_t> high_voltage;    // high-voltage rectifiers: heated by a winding of the sweep's transformer
  std::vector<std::size_t> without_heater;  // gas tubes and the like
  std::vector<std::size_t> not_known;       // no row, or a row without the figures: never guessed
};

// The voltage of the line that strings are made for, in the United States from about 1940.
inline constexpr double kLineVolts = 117;

// Decided from the types alone: a string needs one current (0.6, 0.45, 0.3 or 0.15 A) that nearly all heaters are made
// for, and heaters of different voltages that add up to half the line's at least. nullptr stands for a tube without a
// row.
HeaterSums SumHeaters(const std::vector<const TubeEntry*>& tubes);

}  // namespace benchleaf

#endif  // BENCHLEAF_LINEUP_HEATERS_H_
