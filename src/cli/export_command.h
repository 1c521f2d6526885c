// export: everything in the index, as JSON Lines.

#ifndef BENCHLEAF_SRC_CLI_EXPORT_COMMAND_H_
#define BENCHLEAF_SRC_CLI_EXPORT_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

namespace benchleaf {

struct ExportOptions {
  PlaceOptions places;
};

void SetUpExport(CLI::App& app, Job& job);
ExitCode RunExport(const ExportOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_EXPORT_COMMAND_H_
