// files: what lies in a library, as the beginning of its library.csv.

#ifndef BENCHLEAF_SRC_CLI_FILES_COMMAND_H_
#define BENCHLEAF_SRC_CLI_FILES_COMMAND_H_

#include "cli/job.h"

#include <string>

namespace benchleaf {

struct FilesOptions {
  std::string library;
  bool write = false;  // to the library's folder
  bool json = false;
};

void SetUpFiles(CLI::App& app, Job& job);
ExitCode RunFiles(const FilesOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_FILES_COMMAND_H_
