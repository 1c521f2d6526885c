#include "bench/one_thread.h"

#include <unistd.h>

#include <cstdlib>
#include <stdexcept>
#include <string_view>

namespace benchleaf::bench {

void KeepToOneThread(char** argv) {
  const char* limit = std::getenv("OMP_THREAD_LIMIT");
  if (limit != nullptr && std::string_view(limit) == "1") {
    return;
  }
  setenv("OMP_THREAD_LIMIT", "1", 1);
  execv("/proc/self/exe", argv);
  throw std::runtime_error("cannot start anew with OMP_THREAD_LIMIT=1: set it in the shell");
}

}  // namespace benchleaf::bench
