// worker: reads pages for the process that started it; not for people.

#ifndef BENCHLEAF_SRC_CLI_WORKER_COMMAND_H_
#define BENCHLEAF_SRC_CLI_WORKER_COMMAND_H_

#include "cli/job.h"

namespace benchleaf {

void SetUpWorker(CLI::App& app, Job& job);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_WORKER_COMMAND_H_
