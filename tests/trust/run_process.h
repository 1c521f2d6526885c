// Runs a program to its end.

#ifndef BENCHLEAF_TESTS_TRUST_RUN_PROCESS_H_
#define BENCHLEAF_TESTS_TRUST_RUN_PROCESS_H_

#include <chrono>
#include <csignal>
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace benchleaf {

struct ProcessRun {
  std::vector<std::string> arguments;                   // the program first
  std::map<std::string, std::string> environment = {};  // added to this process's
  std::function<bool()> prepare = {};  // in the new process, before the program; false: the run is given up (code 125)
  std::chrono::milliseconds kill_after = std::chrono::minutes(2);
  int kill_by = SIGKILL;  // the signal, sent once
};

struct ProcessEnd {
  int code = -1;   // of exit; -1 when it was killed
  int signal = 0;  // that ended it
  bool timed_out = false;
  std::string out;
  std::string err;
};

ProcessEnd RunProcess(const ProcessRun& run);

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_TRUST_RUN_PROCESS_H_
