// Which tubes may stand in the place of another.

#ifndef BENCHLEAF_TUBES_STAND_INS_H_
#define BENCHLEAF_TUBES_STAND_INS_H_

#include "benchleaf/tubes/tube_table.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// How one type stands to another whose place it is to take; the better ones come first.
enum class Standing {
  kSame,         // the type itself or another name of the same tube
  kServes,       // a later or better type: in its place, but not the other way round
  kIndustrial,   // its industrial or military version
  kEarlier,      // what it is a later, better or industrial form of: only where its ratings suffice
  kOtherHeater,  // the same tube for another heater string: never without changing the heater's supply
};

// "same tube", "later or better type", "industrial or military version", "earlier or plainer form", "other heater".
std::string_view Name(Standing standing);

// Whether a tube that stands so serves, without a thought for the set that it goes into.
constexpr bool Serves(Standing standing) { return standing <= Standing::kIndustrial; }

struct StandIn {
  Standing standing = Standing::kSame;
  bool by_suffix = false;       // told by the numbers' suffixes alone, since the table has no row of one of the two
  bool heater_differs = false;  // its heater, where both are known, draws another current or takes other volts

  friend bool operator==(const StandIn&, const StandIn&) = default;
};

// What may stand in the place of one type. Immutable; the table must outlive it.
//
// Relations are followed through other names of the same tube and through later types. Of types without a row the
// suffix tells (RETMA/EIA practice, from memory): letters A to F number the revisions, of which a later one serves in
// place of an earlier one and not the other way round; W marks a military version; G and GT are other bulbs of the same
// tube.
class StandIns {
 public:
  // Of a type that may have several names (12AX7A/ECC83), marks in front (JAN-12AX7) or a service number (VT231).
  StandIns(std::string_view wanted, const TubeTable& table);

  // How `type`, written in any of these ways, stands to the wanted one; nothing when no relation is known.
  std::optional<StandIn> Find(std::string_view type) const;

 private:
  const TubeTable& table_;
  std::vector<std::string> wanted_;  // its names, as the table has them
  std::map<std::string, Standing, std::less<>> standings_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_TUBES_STAND_INS_H_
