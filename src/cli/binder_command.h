// binder: the library as a folder of pages for a browser.

#ifndef BENCHLEAF_SRC_CLI_BINDER_COMMAND_H_
#define BENCHLEAF_SRC_CLI_BINDER_COMMAND_H_

#include "cli/job.h"
#include "cli/places.h"
#include "cli/talk_options.h"

#include <string>
#include <vector>

namespace benchleaf {

struct BinderOptions {
  PlaceOptions places;
  std::string out;
  std::vector<std::string> sets;  // as typed; empty: all
  int workers = 1;
  TalkOptions talk;
  bool json = false;
};

void SetUpBinder(CLI::App& app, Job& job);
ExitCode RunBinder(const BinderOptions& options, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_BINDER_COMMAND_H_
