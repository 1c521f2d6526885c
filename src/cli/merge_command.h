// merge: one index of all shards of a library.

#ifndef BENCHLEAF_SRC_CLI_MERGE_COMMAND_H_
#define BENCHLEAF_SRC_CLI_MERGE_COMMAND_H_

#include "cli/job.h"

#include <string>
#include <vector>

namespace benchleaf {

struct MergeOptions {
  std::string database;
  std::vector<std::string> shards;
  bool json = false;
};

void SetUpMerge(CLI::App& app, Job& job);
ExitCode RunMerge(const MergeOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_MERGE_COMMAND_H_
