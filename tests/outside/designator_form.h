// The plain form of a designator, by which sheets are marked and bare reading is judged.

#ifndef BENCHLEAF_TESTS_OUTSIDE_DESIGNATOR_FORM_H_
#define BENCHLEAF_TESTS_OUTSIDE_DESIGNATOR_FORM_H_

#include <string_view>

namespace benchleaf::outside {

// One to three capital letters, one to four digits, perhaps a letter for the unit: class letters and number as in
// IEEE 315 / ASME Y14.44, kept this narrow so that net names rarely pass.
bool HasDesignatorForm(std::string_view text);

}  // namespace benchleaf::outside

#endif  // BENCHLEAF_TESTS_OUTSIDE_DESIGNATOR_FORM_H_
