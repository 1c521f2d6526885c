// A made page as a reader without fault would read it: what is lost on it, rules lose.

#ifndef BENCHLEAF_TESTS_BENCH_PRINTED_READING_H_
#define BENCHLEAF_TESTS_BENCH_PRINTED_READING_H_

#include "scan-maker/made_page.h"

#include "benchleaf/reading/page_reading.h"

namespace benchleaf::bench {

// Every printed word in its place, on a level page that is the clean page. Words within one text are given their shares
// of its box.
PageReading ReadingAsPrinted(const scanmaker::MadePage& page);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_PRINTED_READING_H_
