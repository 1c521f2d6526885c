// How the tools of the reader's training start and end.

#ifndef BENCHLEAF_TESTS_READER_TRAINING_RUN_TOOL_H_
#define BENCHLEAF_TESTS_READER_TRAINING_RUN_TOOL_H_

#include <cstdio>
#include <exception>
#include <stdexcept>
#include <string>
#include <vector>

namespace benchleaf::training {

// Calls `run` with the arguments. The exit code: 0; 2 for a std::invalid_argument, which is told with the usage; 1 for
// any other std::exception, which is told.
inline int RunTool(const char* name, const char* usage, int argc, char** argv,
                   void (*run)(const std::vector<std::string>& arguments)) {
  try {
    run({argv + 1, argv + argc});
  } catch (const std::invalid_argument& problem) {
    std::fprintf(stderr, "%s: %s\n%s", name, problem.what(), usage);
    return 2;
  } catch (const std::exception& problem) {
    std::fprintf(stderr, "%s: %s\n", name, problem.what());
    return 1;
  }
  return 0;
}

}  // namespace benchleaf::training

#endif  // BENCHLEAF_TESTS_READER_TRAINING_RUN_TOOL_H_
