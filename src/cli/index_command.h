// index: bring the index up to date with the library.

#ifndef BENCHLEAF_SRC_CLI_INDEX_COMMAND_H_
#define BENCHLEAF_SRC_CLI_INDEX_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"
#include "cli/talk_options.h"

#include "benchleaf/work/index_library.h"

#include <string>

namespace benchleaf {

struct IndexCommandOptions {
  PlaceOptions places;
  int workers = 1;
  std::string shard;
  bool read_again = false;
  TalkOptions talk;
  bool json = false;
};

void SetUpIndex(CLI::App& app, Job& job);
ExitCode RunIndex(const IndexCommandOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_INDEX_COMMAND_H_
