// A word of a page as a term: what kind it is, and its canonical text.

#ifndef BENCHLEAF_SRC_EXTRACT_TERMS_H_
#define BENCHLEAF_SRC_EXTRACT_TERMS_H_

#include "extract/designator.h"
#include "extract/designator_range.h"
#include "extract/part_number.h"
#include "extract/pieces.h"
#include "extract/rule_tables.h"
#include "extract/term.h"
#include "extract/tube_type.h"

#include <string_view>
#include <vector>

namespace benchleaf::extract {

// What the surroundings of a word say about it.
struct Surroundings {
  RangeStyle ranges = RangeStyle::kDrawing;
  PartPlace parts = PartPlace::kAnywhere;
  TubeContext tubes = TubeContext::kNone;
  LoneStrokes lone_strokes = LoneStrokes::kRefuse;
  bool rkm_in_use = false;  // the page writes values as 4K7: then 6K8 is a value, not a tube
};

// Every term that a plain text holds: one for "R12", two for "V1:6AU6", eight for "R1-R8".
std::vector<Term> TermsIn(std::string_view plain, const Rules::Tables& tables, const Surroundings& around);

// The same for a piece; where its own text gives nothing or only something repaired, a reader's alternative that needs
// no repair is taken instead.
std::vector<Term> TermsOf(const Piece& piece, const Rules::Tables& tables, const Surroundings& around);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_TERMS_H_
