// Parts by their designators, over lists and drawings.

#ifndef BENCHLEAF_SRC_GAPS_PART_NAMES_H_
#define BENCHLEAF_SRC_GAPS_PART_NAMES_H_

#include "benchleaf/extract/rules.h"

#include <optional>
#include <string>
#include <tuple>

namespace benchleaf::gaps {

// A part without the letter of its section: C1 for C1A.
struct PartName {
  std::string assembly;  // "A4"; empty when none is known
  std::string letters;
  int number = 0;

  // "A4C12".
  std::string Text() const { return assembly + letters + std::to_string(number); }
  // Whether they may be one part: where one side does not know its assembly, it may be the other's.
  bool MayBe(const PartName& other) const {
    return letters == other.letters && number == other.number &&
           (assembly == other.assembly || assembly.empty() || other.assembly.empty());
  }

  friend bool operator==(const PartName&, const PartName&) = default;
  friend bool operator<(const PartName& a, const PartName& b) {
    return std::tie(a.assembly, a.letters, a.number) < std::tie(b.assembly, b.letters, b.number);
  }
};

// A designator with its assembly, which is printed in front of it or given apart; nothing for what is none.
std::optional<PartName> PartNameOf(const std::string& designator, const std::string& assembly, const Rules& rules);

}  // namespace benchleaf::gaps

#endif  // BENCHLEAF_SRC_GAPS_PART_NAMES_H_
