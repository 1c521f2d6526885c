// Type numbers of electron tubes.

#ifndef BENCHLEAF_SRC_EXTRACT_TUBE_TYPE_H_
#define BENCHLEAF_SRC_EXTRACT_TUBE_TYPE_H_

#include "extract/rule_tables.h"

#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::extract {

// Whether something near the text says that a tube type stands here: a tube's designator, the word TUBE.
enum class TubeContext { kNone, kTube };

struct TubeType {
  std::string type;       // canonical: capitals, no dashes but those of the type itself, 0A2 for OA2, 12AX7A/ECC83
  double sure = 0;        // 0 to 1
  bool known = false;     // stands in config/tube-types.tsv, perhaps with another suffix
  bool repaired = false;  // other characters were read
};

// A whole text as a tube type:
// - RETMA/EIA receiving types: heater voltage, one or two letters, number of elements, suffixes (6CB6A, 6SN7GTB, 0A2,
//   loktal 7N7 and 14F7);
// - cathode-ray tubes: screen size, letters, P, phosphor (10BP4, 21ZP4A, 5UP1);
// - Pro Electron: letters for heater and systems, then a number (EL84, PCL82, ECC83), with a dash as some printed it;
// - bare numbers (80, 01A, 5725), only near a sign that a tube is meant, or known with a suffix (5751WA);
// - with JAN in front, one section ("1/2-12AU7" gives 12AU7), two names ("12AX7A/ECC83");
// - service numbers VT-52 and CV4024.
// Looks past characters that scans confuse when exactly one known type can have been meant; then `repaired` is set.
std::optional<TubeType> ParseTubeType(std::string_view plain, const Rules::Tables& tables, TubeContext context);

// The one known type that a text in capitals, without dashes, looks like; nothing when several are as likely. Also for
// types whose suffix is not in the tables (6SN7GT8).
std::optional<TubeType> TubeTypeLookingLike(const std::string& text, const Rules::Tables& tables, TubeContext context);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_TUBE_TYPE_H_
