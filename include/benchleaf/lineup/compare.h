// Two sets' tubes side by side.

#ifndef BENCHLEAF_LINEUP_COMPARE_H_
#define BENCHLEAF_LINEUP_COMPARE_H_

#include "benchleaf/lineup/line_up.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

enum class TubeRelation {
  kSame,          // the same type
  kForms,         // forms of one type of which the tube table has no rows apart: 6CB6 and 6CB6B
  kEquivalent,    // another name of the same tube: 12AX7 and ECC83
  kFirstServes,   // the first set's type may stand in the second's place, and not the other way round
  kSecondServes,  // the other way round
  kHeaterOnly,    // the same tube for another heater supply
  kOnlyFirst,
  kOnlySecond,
};
// "same type", "equivalent", "first serves for second", ...
std::string_view Name(TubeRelation relation);

// The tubes of one type in either set.
struct ComparedTypes {
  TubeRelation relation = TubeRelation::kSame;
  std::string first_type;  // empty where only the second set has it
  std::string second_type;
  std::vector<std::size_t> first;  // positions among the tubes of the lineup
  std::vector<std::size_t> second;
};

// A function that both sets have, and the tubes that do it.
struct ComparedFunction {
  std::string function;
  std::vector<std::size_t> first;
  std::vector<std::size_t> second;
};

struct LineupComparison {
  std::vector<ComparedTypes> types;         // by relation, then by type
  std::vector<ComparedFunction> functions;  // by name
};

// Each type goes to the type of the other set that is nearest to it, so that one of the first set may stand against
// several of the second. Relations are those that the tube table states.
LineupComparison Compare(const ManualLineup& first, const ManualLineup& second);

}  // namespace benchleaf

#endif  // BENCHLEAF_LINEUP_COMPARE_H_
