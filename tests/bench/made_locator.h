// A parts locator to be read.

#ifndef BENCHLEAF_TESTS_BENCH_MADE_LOCATOR_H_
#define BENCHLEAF_TESTS_BENCH_MADE_LOCATOR_H_

#include "scan-maker/lettering.h"
#include "scan-maker/made_page.h"

#include <cstdint>

namespace benchleaf::bench {

// The bottom of an invented chassis of seven stages. Same lettering and seed: same page.
scanmaker::MadePage MadeLocator(scanmaker::Lettering lettering, std::uint64_t seed);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_MADE_LOCATOR_H_
