// The texts under which a sighting is found.

#ifndef BENCHLEAF_STORE_SIGHTING_NAMES_H_
#define BENCHLEAF_STORE_SIGHTING_NAMES_H_

#include "benchleaf/extract/sighting.h"

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::store {

// Upper case, without white space: " c 112 " is "C112". Only ASCII letters have cases here, as in canonical texts.
std::string Canonical(std::string_view text);

// The forms of a canonical text besides itself: "C12" of the designator "A4C12"; none for kinds without forms.
std::vector<std::string> OtherForms(TermKind kind, const std::string& text);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_SIGHTING_NAMES_H_
