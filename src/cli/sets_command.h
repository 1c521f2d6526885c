// sets: what the index holds.

#ifndef BENCHLEAF_SRC_CLI_SETS_COMMAND_H_
#define BENCHLEAF_SRC_CLI_SETS_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>

namespace benchleaf {

struct SetsOptions {
  PlaceOptions places;
  std::string set;     // empty: all
  bool names = false;  // nothing else, a line each
  bool json = false;
};

void SetUpSets(CLI::App& app, Job& job);
ExitCode RunSets(const SetsOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_SETS_COMMAND_H_
