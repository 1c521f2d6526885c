// The plain forms of tube types and part numbers, by which bare reading is judged.

#ifndef BENCHLEAF_TESTS_OUTSIDE_TERM_FORMS_H_
#define BENCHLEAF_TESTS_OUTSIDE_TERM_FORMS_H_

#include <string_view>

namespace benchleaf::outside {

// RETMA/EIA (heater voltage, letters, number of elements, suffix: 6CB6A, 5U4GB), Pro Electron (heater letter, one to
// three system letters, number: ECC83, EL84), or four digits that begin with 5 or 6 (5725, 6080): common practice for
// industrial types.
bool HasTubeForm(std::string_view text);

// Digits and capitals in groups that dashes join, four digits or more among them: 12-3456, 151-0124-00.
bool HasPartNumberForm(std::string_view text);

}  // namespace benchleaf::outside

#endif  // BENCHLEAF_TESTS_OUTSIDE_TERM_FORMS_H_
