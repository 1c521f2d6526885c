// Starts a worker's program under its limits. Apart from WorkerProcess, because what runs between fork and exec must
// keep to rules of its own.

#ifndef BENCHLEAF_SRC_WORK_WORKER_LAUNCH_H_
#define BENCHLEAF_SRC_WORK_WORKER_LAUNCH_H_

#include "work/unique_fd.h"

#include "benchleaf/core/result.h"
#include "benchleaf/work/index_library.h"

#include <sys/types.h>

#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf {

struct LaunchedWorker {
  pid_t pid = 0;
  UniqueFd talk;     // a socket to the worker's standard input and output; non-blocking
  UniqueFd chatter;  // reads the worker's standard error; non-blocking
};

// Fails with kMissing when there is no such program and with kIo when it cannot be started.
Result<LaunchedWorker> LaunchWorker(const std::filesystem::path& program, const std::vector<std::string>& arguments,
                                    const WorkerLimits& limits);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_WORKER_LAUNCH_H_
