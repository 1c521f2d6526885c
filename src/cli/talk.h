// What commands say besides their data, and how failures become exit codes.

#ifndef BENCHLEAF_SRC_CLI_TALK_H_
#define BENCHLEAF_SRC_CLI_TALK_H_

#include "benchleaf/cli/run.h"
#include "benchleaf/core/result.h"
#include "benchleaf/report/table.h"

#include <string>

namespace benchleaf {

// One line on the talking stream, "benchleaf: MESSAGE", made harmless: messages quote names of files.
void Say(const Streams& streams, const std::string& message);

// Comma-separated values: for a program as they are; on a terminal made harmless, line by line.
void WriteCsv(const Streams& streams, const std::string& csv);

// Says what went wrong, and gives the exit code for it.
ExitCode Stop(const Streams& streams, const Error& error);

ExitCode ExitCodeFor(ErrorCode code);

// How data may look: colours only on a terminal that has them, and not when NO_COLOR (no-color.org) is set or TERM is
// "dumb" or unset; lines as wide as the terminal.
Look LookOfOut(const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_TALK_H_
