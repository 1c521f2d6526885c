// The command line, callable from tests: main() only passes its arguments here.

#ifndef BENCHLEAF_CLI_RUN_H_
#define BENCHLEAF_CLI_RUN_H_

#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

namespace benchleaf {

// Exit codes, documented in the README.
enum class ExitCode : int {
  kOk = 0,            // done, and something was found
  kNothingFound = 1,  // done, but nothing fits the question
  kPartly = 2,        // done, but some files, pages or rows could not be read
  kUsage = 3,         // the arguments or a configuration file cannot be understood
  kCannotRun = 4,     // no library, no index, index busy or foreign, disk full
  kInterrupted = 130,
};

// What a command needs of the world.
struct Streams {
  std::ostream& out;  // data
  std::ostream& err;  // talk
  bool out_is_terminal = false;
  bool err_is_terminal = false;
  int out_columns = 80;  // width of the terminal
  // Where the program may remember things for its next run; empty: nowhere.
  std::filesystem::path state_folder = {};
};

// Parses the arguments (without the program's name) and runs the command. Throws nothing.
ExitCode Run(const std::vector<std::string>& arguments, const Streams& streams);

}  // namespace benchleaf

#endif  // BENCHLEAF_CLI_RUN_H_
