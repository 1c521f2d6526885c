#include "trust/run_process.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <cstdlib>

namespace benchleaf {
namespace {

[[noreturn]] void Become(const ProcessRun& run, int out, int err) {
  const int nothing = ::open("/dev/null", O_RDONLY);
  ::dup2(nothing, STDIN_FILENO);
  ::dup2(out, STDOUT_FILENO);
  ::dup2(err, STDERR_FILENO);
  for (const auto& [name, value] : run.environment) {
    ::setenv(name.c_str(), value.c_str(), 1);
  }
  if (run.prepare && !run.prepare()) {
    ::_exit(125);
  }
  std::vector<char*> words;
  for (const std::string& argument : run.arguments) {
    words.push_back(const_cast<char*>(argument.c_str()));
  }
  words.push_back(nullptr);
  ::execv(words.front(), words.data());
  ::_exit(127);
}

// Takes in what there is; closes and forgets the descriptor at the end.
void Drain(int& descriptor, std::string& text) {
  std::array<char, 65536> chunk{};
  const ssize_t got = ::read(descriptor, chunk.data(), chunk.size());
  if (got > 0) {
    text.append(chunk.data(), static_cast<std::size_t>(got));
  } else {
    ::close(descriptor);
    descriptor = -1;
  }
}

}  // namespace

ProcessEnd RunProcess(const ProcessRun& run) {
  int out[2] = {-1, -1};
  int err[2] = {-1, -1};
  ProcessEnd end;
  if (::pipe2(out, O_CLOEXEC) != 0 || ::pipe2(err, O_CLOEXEC) != 0) {
    return end;
  }
  const pid_t pid = ::fork();
  if (pid == 0) {
    Become(run, out[1], err[1]);
  }
  ::close(out[1]);
  ::close(err[1]);
  const auto deadline = std::chrono::steady_clock::now() + run.kill_after;
  bool killed = false;
  while (out[0] >= 0 || err[0] >= 0) {
    const auto left = std::chrono::ceil<std::chrono::milliseconds>(deadline - std::chrono::steady_clock::now()).count();
    if (left <= 0 && !killed) {
      end.timed_out = true;
      killed = true;
      ::kill(pid, run.kill_by);
    }
    std::array<pollfd, 2> waited = {{{out[0], POLLIN, 0}, {err[0], POLLIN, 0}}};
    ::poll(waited.data(), waited.size(), killed ? 1000 : static_cast<int>(left));
    if (waited[0].revents != 0) {
      Drain(out[0], end.out);
    }
    if (waited[1].revents != 0) {
      Drain(err[0], end.err);
    }
  }
  int status = 0;
  ::waitpid(pid, &status, 0);
  if (WIFEXITED(status)) {
    end.code = WEXITSTATUS(status);
  } else {
    end.signal = WTERMSIG(status);
  }
  return end;
}

}  // namespace benchleaf
