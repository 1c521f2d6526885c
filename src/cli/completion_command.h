// completion: a script for a shell. man-page: the manual page, for the build.

#ifndef BENCHLEAF_SRC_CLI_COMPLETION_COMMAND_H_
#define BENCHLEAF_SRC_CLI_COMPLETION_COMMAND_H_

#include "cli/job.h"

namespace benchleaf {

// Both tell of `app` itself, which must outlive the job.
void SetUpCompletion(CLI::App& app, Job& job);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_COMPLETION_COMMAND_H_
