// gaps: what a set's manuals lack, and where they contradict themselves.

#ifndef BENCHLEAF_SRC_CLI_GAPS_COMMAND_H_
#define BENCHLEAF_SRC_CLI_GAPS_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>
#include <vector>

namespace benchleaf {

struct GapsOptions {
  PlaceOptions places;
  std::string set;
  std::vector<std::string> only;  // kinds; empty: all
  bool json = false;
  bool csv = false;
};

// The kinds of findings, by the names that --only takes.
std::vector<std::string> GapKinds();

void SetUpGaps(CLI::App& app, Job& job);
ExitCode RunGaps(const GapsOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_GAPS_COMMAND_H_
