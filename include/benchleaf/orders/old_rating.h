// Values and ratings as old parts lists write them: .05 MFD 600 V, 250 MMF, 20-20/450, 40/450-40/450-20/25, 470K 1/2 W.

#ifndef BENCHLEAF_ORDERS_OLD_RATING_H_
#define BENCHLEAF_ORDERS_OLD_RATING_H_

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// One capacitor of a can; a plain capacitor is one.
struct CapacitorSection {
  double farads = 0;
  std::optional<double> volts;

  friend bool operator==(const CapacitorSection&, const CapacitorSection&) = default;
};

// What a row of a parts list says of a part, as far as it can be understood.
struct OldRating {
  std::vector<CapacitorSection> sections;  // in the order of the row; empty when no capacitance is read
  std::optional<double> ohms;
  std::optional<double> watts;
  std::optional<double> volts;  // as written, for all sections that have none of their own
  std::optional<double> amps;
  bool alternating = false;         // the voltage is said to be of alternating current
  std::vector<std::string> doubts;  // "450 without a unit taken for volts": for a person to look at
};

// Reads `value` (canonical, as the index has it; may be empty) and `description`. `letters` are the class letters of
// the part: C for capacitors, R for resistors; what has no unit is taken by them. MF and MFD are microfarads, MMF, UUF
// and PF picofarads, M behind a resistor's number megohms, as was common practice (no source); 4K7 by IEC 60062.
//
// What scans do to print is undone where one thing only can be meant, with a doubt: S00 V is 500 V, "47K7 1/2 W" is 47K
// where 47.7K is no preferred value (IEC 60063), a comma behind a unit read as 7.
OldRating ReadRating(std::string_view value, std::string_view description, std::string_view letters);

}  // namespace benchleaf

#endif  // BENCHLEAF_ORDERS_OLD_RATING_H_
