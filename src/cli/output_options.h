// The files that a command writes, and how it tells of them.

#ifndef BENCHLEAF_SRC_CLI_OUTPUT_OPTIONS_H_
#define BENCHLEAF_SRC_CLI_OUTPUT_OPTIONS_H_

#include "cli/job.h"
#include "cli/talk_options.h"

#include "benchleaf/core/result.h"

#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf {

struct OutputOptions {
  std::string out;     // file to write; empty: named after what it shows
  bool force = false;  // write over files that are there
  bool json = false;   // tell of each as a JSON object
  TalkOptions talk;
};

// --out, as `about_out` explains it, --force, --quiet, --verbose and --json.
void AddOutputOptions(CLI::App& command, const std::string& about_out, OutputOptions& options);

// Fails with kIo, naming the file, when one of them is there already and may not be written over.
Result<void> CheckMayWrite(const OutputOptions& options, const std::vector<std::filesystem::path>& files);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_OUTPUT_OPTIONS_H_
