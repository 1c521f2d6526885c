// parts: the parts of a set.

#ifndef BENCHLEAF_SRC_CLI_PARTS_COMMAND_H_
#define BENCHLEAF_SRC_CLI_PARTS_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>

namespace benchleaf {

struct PartsOptions {
  PlaceOptions places;
  std::string set;
  bool json = false;
  bool csv = false;
};

void SetUpParts(CLI::App& app, Job& job);
ExitCode RunParts(const PartsOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PARTS_COMMAND_H_
