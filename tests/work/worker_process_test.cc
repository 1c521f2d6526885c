#include "work/worker_process.h"

#include "work/programs.h"

#include <gtest/gtest.h>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/wait.h>

#include <chrono>
#include <csignal>
#include <fstream>
#include <string>
#include <thread>

namespace benchleaf {
namespace {

// A shell script in the place of a worker.
std::filesystem::path Script(const TemporaryFolder& folder, const std::string& commands) {
  const auto path = folder.Write("worker", "#!/bin/sh\n" + commands + "\n");
  std::filesystem::permissions(path, std::filesystem::perms::owner_all);
  return path;
}

// Everything that the worker writes until it ends.
std::string AllOf(WorkerProcess& worker) {
  std::string text;
  while (true) {
    pollfd waited{worker.answers_fd(), POLLIN, 0};
    EXPECT_EQ(::poll(&waited, 1, 20000), 1);
    std::string chunk(4096, '\0');
    const ssize_t got = ::read(worker.answers_fd(), chunk.data(), chunk.size());
    if (got <= 0) {
      return text;
    }
    text.append(chunk, 0, static_cast<std::size_t>(got));
  }
}

TEST(WorkerProcess, RunsTheProgramUnderItsLimits) {
  const TemporaryFolder folder;
  const auto program = Script(folder,
                              "echo \"$*\"; echo omp $OMP_THREAD_LIMIT; ulimit -S -t; ulimit -c; ulimit -f; ulimit -v; "
                              "grep NoNewPrivs /proc/self/status; cat /proc/$$/stat | cut -d' ' -f5 | grep -qx $$ && "
                              "echo own group; ls /proc/$$/fd");
  WorkerCommand command = Command(program);
  command.config = "/some where/config";
  command.limits.cpu = std::chrono::seconds(77);
  command.limits.address_space_mib = 512;
  // A file that some other part of the program has open, not marked to be closed.
  const UniqueFd stray(::dup(STDERR_FILENO));
  const auto worker = WorkerProcess::Start(command);
  ASSERT_TRUE(worker) << worker.error().ToString();
#ifdef __SANITIZE_ADDRESS__
  const std::string address_space = "unlimited";
#else
  const std::string address_space = std::to_string(512 * 1024);
#endif
  // 10 is the shell's own descriptor, of the script.
  EXPECT_EQ(AllOf(**worker), "worker --config /some where/config\nomp 1\n77\n0\n0\n" + address_space +
                                 "\nNoNewPrivs:\t1\nown group\n0\n1\n10\n2\n");
}

TEST(WorkerProcess, TellsHowItEnded) {
  struct Case {
    const char* commands;
    const char* end;
  };
  const Case cases[] = {
      {"exit 0", "exit code 0"},
      {"echo first >&2; printf 'why\\033[31m\\n\\n' >&2; exit 7", "exit code 7: why[31m"},
      {"kill -SEGV $$", "signal 11"},
      {"echo chatter >&2; kill -SEGV $$", "signal 11"},
      {"echo why >&2; kill -ABRT $$", "signal 6: why"},
      {"exec >&- <&-; sleep 1000", "signal 9"},  // does not listen any more, so it was killed
  };
  for (const Case& c : cases) {
    const TemporaryFolder folder;
    const auto worker = WorkerProcess::Start(Command(Script(folder, c.commands)));
    ASSERT_TRUE(worker);
    AllOf(**worker);
    EXPECT_EQ((*worker)->Stop().ToString(), c.end) << c.commands;
  }
}

TEST(WorkerProcess, ProcessorTimeGrows) {
  const TemporaryFolder folder;
  const auto worker = WorkerProcess::Start(Command(Script(folder, "while :; do :; done")));
  ASSERT_TRUE(worker);
  const auto start = std::chrono::steady_clock::now();
  while ((*worker)->ProcessorTime().count() < 0.2) {
    ASSERT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(60));
    std::this_thread::sleep_for(std::chrono::milliseconds(20));
  }
}

TEST(WorkerProcess, SendingToADeadWorkerIsNoSignal) {
  const TemporaryFolder folder;
  const auto worker = WorkerProcess::Start(Command(Script(folder, "exit 0")));
  ASSERT_TRUE(worker);
  AllOf(**worker);
  EXPECT_FALSE((*worker)->Send("a job"));
}

// The first child of `parent`; 0 when it has none yet.
pid_t ChildOf(pid_t parent) {
  const std::string id = std::to_string(parent);
  std::ifstream file("/proc/" + id + "/task/" + id + "/children");
  pid_t child = 0;
  file >> child;
  return child;
}

TEST(WorkerProcess, DiesWithItsParent) {
  const TemporaryFolder folder;
  const auto program = Script(folder, "sleep 1000");
  // The orphan comes to this process, so that its end can be waited for.
  ASSERT_EQ(::prctl(PR_SET_CHILD_SUBREAPER, 1), 0);
  const pid_t parent = ::fork();
  if (parent == 0) {
    const auto worker = WorkerProcess::Start(Command(program));
    std::this_thread::sleep_for(std::chrono::seconds(1000));
    ::_exit(0);
  }
  pid_t worker = 0;
  for (int i = 0; i < 500 && worker == 0; ++i) {
    std::this_thread::sleep_for(std::chrono::milliseconds(20));
    worker = ChildOf(parent);
  }
  ASSERT_NE(worker, 0) << "the worker was not started";
  ::kill(parent, SIGKILL);
  int status = 0;
  ASSERT_EQ(::waitpid(parent, &status, 0), parent);
  ASSERT_EQ(::waitpid(worker, &status, 0), worker);
  EXPECT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL);
  ::prctl(PR_SET_CHILD_SUBREAPER, 0);
}

}  // namespace
}  // namespace benchleaf
