// Reference designators: letters that name a class of part, a number, perhaps a suffix, perhaps the assembly in front.

#ifndef BENCHLEAF_SRC_EXTRACT_DESIGNATOR_H_
#define BENCHLEAF_SRC_EXTRACT_DESIGNATOR_H_

#include "extract/rule_tables.h"

#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::extract {

// A4A1C12B is assembly "A4A1", letters "C", number 12, suffix "B" (ASME Y14.44: the assemblies' own designators stand
// in front; IEEE 315-1975 clause 22: class letters, number, suffix letter for a section of one part).
struct Designator {
  std::string assembly;  // empty when none is printed
  std::string letters;
  std::string number;    // 1 to 4 figures, no leading zero unless printed so
  std::string suffix;    // empty or one capital
  double sure = 0;       // 0 to 1: how surely a text of this form is a designator
  bool between = false;  // not printed: it lies between the ends of a range

  std::string Text() const { return assembly + letters + number + suffix; }
};

// A whole text in capitals as a designator; nothing when it is none.
std::optional<Designator> ParseDesignator(std::string_view text, const Rules::Tables& tables);

// Its number as a whole number.
int NumberOf(const Designator& designator);

// Whether the text is the letters of a known class, and nothing else.
bool IsDesignatorClass(std::string_view letters, const Rules::Tables& tables);

// A text whose characters are put right where scans confuse them, when only one designator can come of it: "Ri7" is
// R17, "$2" is S2. `sure` falls with each repair. A text that is a designator already comes back as it is.
// `lone_strokes` also allows numbers made of look-alikes alone (RIO is R10): on drawings, and with small letters too in
// a column of designators, never in running text.
enum class LoneStrokes { kRefuse, kAllow, kAllowSmall };
std::optional<Designator> RepairDesignator(std::string_view plain, const Rules::Tables& tables,
                                           LoneStrokes lone_strokes);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_DESIGNATOR_H_
