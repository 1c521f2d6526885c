// tube: what a tube type is, and every set that uses it.

#ifndef BENCHLEAF_SRC_CLI_TUBE_COMMAND_H_
#define BENCHLEAF_SRC_CLI_TUBE_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>

namespace benchleaf {

struct TubeOptions {
  PlaceOptions places;
  std::string type;
  bool json = false;
};

void SetUpTube(CLI::App& app, Job& job);
ExitCode RunTube(const TubeOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_TUBE_COMMAND_H_
