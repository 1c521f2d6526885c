// The manual page, benchleaf(1).

#ifndef BENCHLEAF_SRC_CLI_MAN_PAGE_H_
#define BENCHLEAF_SRC_CLI_MAN_PAGE_H_

#include "cli/command_outline.h"

#include <string>

namespace benchleaf {

// In the man macros of troff. The same for the same program: it bears the version and no date.
std::string ManPage(const ProgramOutline& program, const std::string& version);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_MAN_PAGE_H_
