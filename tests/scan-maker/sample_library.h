// Writes the sample library that the project commits.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SAMPLE_LIBRARY_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SAMPLE_LIBRARY_H_

#include "scan-maker/sample_manual.h"

#include <filesystem>
#include <vector>

namespace benchleaf::scanmaker {

// Scans the pages of the file and writes it under `library`, making folders as needed. Gives the truth of its pages.
// Throws std::runtime_error when something cannot be written.
std::vector<PageTruth> WriteSampleFile(const std::filesystem::path& library, const SampleFile& file);

// `out`/library with its sets and library.csv, and `out`/truth.jsonl. The same bytes at every run.
void WriteSampleLibrary(const std::filesystem::path& out);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SAMPLE_LIBRARY_H_
