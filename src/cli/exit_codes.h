// What the exit codes mean, in the words of help and manual page.

#ifndef BENCHLEAF_SRC_CLI_EXIT_CODES_H_
#define BENCHLEAF_SRC_CLI_EXIT_CODES_H_

#include "benchleaf/cli/run.h"

#include <array>
#include <string_view>

namespace benchleaf {

struct ExitCodeMeaning {
  ExitCode code;
  std::string_view meaning;
};

inline constexpr std::array<ExitCodeMeaning, 6> kExitCodes = {{
    {ExitCode::kOk, "done"},
    {ExitCode::kNothingFound, "nothing fits the question"},
    {ExitCode::kPartly, "done, but some files, pages or rows could not be read"},
    {ExitCode::kUsage, "the arguments or a table of configuration cannot be understood, or a name fits several sets"},
    {ExitCode::kCannotRun,
     "could not run: no library, no index, another program writes the index, a foreign folder, a full disk"},
    {ExitCode::kInterrupted, "interrupted"},
}};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_EXIT_CODES_H_
