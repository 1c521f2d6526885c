// How much a command tells while it works.

#ifndef BENCHLEAF_SRC_CLI_TALK_OPTIONS_H_
#define BENCHLEAF_SRC_CLI_TALK_OPTIONS_H_

#include "cli/job.h"

#include <string>

namespace benchleaf {

enum class Talk {
  kQuiet,    // problems only
  kNormal,   // and how far it is: one line written over and over on a terminal, else a line now and then
  kVerbose,  // and a line for each page
};

struct TalkOptions {
  bool quiet = false;
  bool verbose = false;

  Talk talk() const;
};

// --quiet and --verbose.
void AddTalkOptions(CLI::App& command, TalkOptions& options);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_TALK_OPTIONS_H_
