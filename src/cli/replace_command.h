// replace: what to order for a set.

#ifndef BENCHLEAF_SRC_CLI_REPLACE_COMMAND_H_
#define BENCHLEAF_SRC_CLI_REPLACE_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>
#include <vector>

namespace benchleaf {

struct ReplaceOptions {
  PlaceOptions places;
  std::string set;
  std::vector<std::string> only;  // kinds, as typed; empty: those that age
  bool json = false;
  bool csv = false;
};

void SetUpReplace(CLI::App& app, Job& job);
ExitCode RunReplace(const ReplaceOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_REPLACE_COMMAND_H_
