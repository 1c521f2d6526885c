// The pages of a made manual after printing, ageing, scanning and reading.

#ifndef BENCHLEAF_TESTS_BENCH_MANUAL_READINGS_H_
#define BENCHLEAF_TESTS_BENCH_MANUAL_READINGS_H_

#include "bench/benchleaf_reader.h"
#include "bench/kept_readings.h"
#include "bench/made_manuals.h"
#include "scan-maker/degrade.h"
#include "scan-maker/truth.h"

#include "benchleaf/record/manual_record.h"

#include <vector>

namespace benchleaf::bench {

struct ReadManual {
  std::vector<scanmaker::PageTruth> truth;  // with the manual's name as file
  std::vector<PageRecord> pages;            // read, not yet searched
};

// Reads what `kept` does not hold.
ReadManual ReadPages(const MadeManual& made, scanmaker::Grade grade, BenchleafReader& reader, const KeptReadings& kept);

// The same with the words as they were printed on the clean pages: no reader can err.
ReadManual PrintedPages(const MadeManual& made);

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_MANUAL_READINGS_H_
