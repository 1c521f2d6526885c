// lineup: a set's tubes, or two sets' side by side.

#ifndef BENCHLEAF_SRC_CLI_LINEUP_COMMAND_H_
#define BENCHLEAF_SRC_CLI_LINEUP_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>

namespace benchleaf {

struct LineupOptions {
  PlaceOptions places;
  std::string set;
  std::string other;  // empty: one set alone
  bool json = false;
  bool csv = false;
};

void SetUpLineup(CLI::App& app, Job& job);
ExitCode RunLineup(const LineupOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_LINEUP_COMMAND_H_
