// Tube types on sheets of our own time, which have next to none.

#ifndef BENCHLEAF_TESTS_OUTSIDE_TUBE_LETTERING_H_
#define BENCHLEAF_TESTS_OUTSIDE_TUBE_LETTERING_H_

#include <cstdint>
#include <string>
#include <string_view>

namespace benchleaf::outside {

// Whether a part of this reference bears a type that a tube's type can stand in for: integrated circuits and
// transistors (classes U, IC and Q of IEEE 315).
bool HoldsDevice(std::string_view reference);

// A common tube type for the part, in the systems that manuals use: RETMA/EIA (most of them), Pro Electron, and four
// digits for industrial ones. All units of a part (same `reference`, without unit letter) get the same; another `seed`
// gives others.
const std::string& TubeTypeFor(std::string_view reference, std::uint64_t seed);

}  // namespace benchleaf::outside

#endif  // BENCHLEAF_TESTS_OUTSIDE_TUBE_LETTERING_H_
