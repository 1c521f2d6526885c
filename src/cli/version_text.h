// What `--version` tells.

#ifndef BENCHLEAF_SRC_CLI_VERSION_TEXT_H_
#define BENCHLEAF_SRC_CLI_VERSION_TEXT_H_

#include <string>

namespace benchleaf {

// "0.1.0"
std::string ProgramVersion();

// The program, the reading that its index is kept under, and every third-party library with the version that runs, a
// line each.
std::string VersionText();

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_VERSION_TEXT_H_
