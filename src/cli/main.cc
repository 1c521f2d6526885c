// Joins the command line to the process: its arguments, its streams, its terminal.

#include "benchleaf/cli/run.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <string>
#include <vector>

namespace {

// Columns of the terminal behind the descriptor; 80 when it is none.
int TerminalColumns(int descriptor) {
  winsize size{};
  if (ioctl(descriptor, TIOCGWINSZ, &size) == 0 && size.ws_col > 0) return size.ws_col;
  return 80;
}

// XDG Base Directory Specification: $XDG_STATE_HOME, else ~/.local/state. Empty where neither is known.
std::filesystem::path StateFolder() {
  const char* state = std::getenv("XDG_STATE_HOME");
  if (state != nullptr && *state == '/') return std::filesystem::path(state) / "benchleaf";
  const char* home = std::getenv("HOME");
  if (home != nullptr && *home == '/') return std::filesystem::path(home) / ".local" / "state" / "benchleaf";
  return {};
}

}  // namespace

int main(int argc, char** argv) {
  std::ios::sync_with_stdio(false);
  // A file that may not grow further is a failed write with a message, not the end of the program.
  std::signal(SIGXFSZ, SIG_IGN);
  const bool out_is_terminal = isatty(STDOUT_FILENO) != 0;
  const benchleaf::Streams streams{
      .out = std::cout,
      .err = std::cerr,
      .out_is_terminal = out_is_terminal,
      .err_is_terminal = isatty(STDERR_FILENO) != 0,
      .out_columns = TerminalColumns(out_is_terminal ? STDOUT_FILENO : STDERR_FILENO),
      .state_folder = StateFolder(),
  };
  const benchleaf::ExitCode code =
      benchleaf::Run(std::vector<std::string>(argv + (argc > 0 ? 1 : 0), argv + argc), streams);
  std::cout.flush();
  if (!std::cout) {
    std::cerr << "benchleaf: the output could not be written in full\n";
    return static_cast<int>(benchleaf::ExitCode::kCannotRun);
  }
  return static_cast<int>(code);
}
