// What a command's setup leaves behind: the run that its arguments ask for.

#ifndef BENCHLEAF_SRC_CLI_JOB_H_
#define BENCHLEAF_SRC_CLI_JOB_H_

#include "benchleaf/cli/run.h"

#include <functional>

namespace CLI {
class App;
}

namespace benchleaf {

// Set by the callback of the one command that was named.
using Job = std::function<ExitCode(const Streams&)>;

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_JOB_H_
