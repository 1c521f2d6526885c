#include "cli/talk_options.h"

#include <CLI/CLI.hpp>

namespace benchleaf {

Talk TalkOptions::talk() const {
  if (quiet) return Talk::kQuiet;
  return verbose ? Talk::kVerbose : Talk::kNormal;
}

void AddTalkOptions(CLI::App& command, TalkOptions& options) {
  CLI::Option* quiet = command.add_flag("-q,--quiet", options.quiet, "Tell of problems only");
  command.add_flag("-v,--verbose", options.verbose, "Tell of each page")->excludes(quiet);
}

}  // namespace benchleaf
