// find: where a term stands in the library.

#ifndef BENCHLEAF_SRC_CLI_FIND_COMMAND_H_
#define BENCHLEAF_SRC_CLI_FIND_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"

#include <string>
#include <vector>

namespace benchleaf {

struct FindOptions {
  PlaceOptions places;
  std::vector<std::string> terms;  // each is answered on its own
  std::string set;
  std::string kind;
  int limit = 200;  // places a term
  bool json = false;
};

void SetUpFind(CLI::App& app, Job& job);
ExitCode RunFind(const FindOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_FIND_COMMAND_H_
