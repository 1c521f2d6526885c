// Scripts that complete benchleaf's commands, options and the values that a shell can know.

#ifndef BENCHLEAF_SRC_CLI_COMPLETION_H_
#define BENCHLEAF_SRC_CLI_COMPLETION_H_

#include "cli/command_outline.h"

#include <string>

namespace benchleaf {

// Names of sets are asked of `benchleaf sets --names` when they are wanted.
std::string BashCompletion(const ProgramOutline& program);
std::string ZshCompletion(const ProgramOutline& program);
std::string FishCompletion(const ProgramOutline& program);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_COMPLETION_H_
