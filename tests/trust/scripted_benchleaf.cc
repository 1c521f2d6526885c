// benchleaf with the command line, the index and all, whose workers read no scan but do as the scan's script says
// (work/scripted_pages.h).

#include "work/job_server.h"
#include "work/scripted_pages.h"

#include "benchleaf/cli/run.h"

#include <unistd.h>

#include <csignal>
#include <iostream>
#include <string_view>

int main(int argc, char** argv) {
  if (argc > 1 && std::string_view(argv[1]) == "worker") {
    return benchleaf::ServeJobs(STDIN_FILENO, STDOUT_FILENO, benchleaf::ScriptedAnswer);
  }
  std::signal(SIGXFSZ, SIG_IGN);  // as the program does
  const benchleaf::ExitCode code =
      benchleaf::Run({argv + 1, argv + argc}, {.out = std::cout, .err = std::cerr, .out_columns = 80});
  std::cout.flush();
  return static_cast<int>(code);
}
