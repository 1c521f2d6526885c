#include "work/confine.h"

#include "work/programs.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <linux/openat2.h>
#include <signal.h>
#include <sys/mman.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <functional>
#include <string>

namespace benchleaf {
namespace {

// What `act` gives in a process that has locked itself in: 0 when it succeeds, else errno.
int Confined(const std::function<long()>& act) {
  const pid_t child = ::fork();
  if (child == 0) {
    if (!ConfineToReading()) {
      ::_exit(255);
    }
    errno = 0;
    const bool done = act() >= 0;
    ::_exit(done ? 0 : errno);
  }
  int status = 0;
  EXPECT_EQ(::waitpid(child, &status, 0), child);
  return WIFEXITED(status) ? WEXITSTATUS(status) : 1000 + WTERMSIG(status);
}

class Confinement : public testing::Test {
 protected:
  TemporaryFolder folder_;
  std::string file_ = folder_.Write("there", "content").string();
  std::string other_ = (folder_.path() / "other").string();
};

TEST_F(Confinement, LetsAProcessReadAndCompute) {
  EXPECT_EQ(Confined([&] { return ::open(file_.c_str(), O_RDONLY | O_CLOEXEC); }), 0);
  EXPECT_EQ(Confined([&] {
              char byte = 0;
              return ::read(::open(file_.c_str(), O_RDONLY), &byte, 1) - 1;
            }),
            0);
  EXPECT_EQ(Confined([&] { return ::open("/proc/self", O_RDONLY | O_DIRECTORY); }), 0);
  EXPECT_EQ(Confined([] {
              void* const memory = std::malloc(std::size_t{64} << 20U);
              const long taken = memory != nullptr ? 0 : -1;
              std::free(memory);
              return taken;
            }),
            0);
  EXPECT_EQ(Confined([] { return ::open("/no such file", O_RDONLY); }), ENOENT);
}

TEST_F(Confinement, ForbidsWhatAReaderHasNoBusinessWith) {
  struct Case {
    const char* what;
    std::function<long()> act;
  };
  const Case cases[] = {
      {"open for writing", [&] { return ::open(file_.c_str(), O_WRONLY); }},
      {"open for both", [&] { return ::open(file_.c_str(), O_RDWR); }},
      {"append", [&] { return ::open(file_.c_str(), O_WRONLY | O_APPEND); }},
      {"empty a file while opening it for reading", [&] { return ::open(file_.c_str(), O_RDONLY | O_TRUNC); }},
      {"make a file while opening it for reading", [&] { return ::open(other_.c_str(), O_RDONLY | O_CREAT, 0600); }},
      {"make a nameless file", [&] { return ::open(folder_.path().c_str(), O_TMPFILE | O_RDWR, 0600); }},
      {"the newer way to open",
       [&] {
         open_how how{};
         how.flags = O_RDWR;
         return ::syscall(SYS_openat2, AT_FDCWD, file_.c_str(), &how, sizeof(how));
       }},
      {"make a file in memory", [] { return ::memfd_create("x", 0); }},
      {"remove", [&] { return ::unlink(file_.c_str()); }},
      {"rename", [&] { return ::rename(file_.c_str(), other_.c_str()); }},
      {"link", [&] { return ::link(file_.c_str(), other_.c_str()); }},
      {"cut", [&] { return ::truncate(file_.c_str(), 0); }},
      {"change rights", [&] { return ::chmod(file_.c_str(), 0777); }},
      {"make a folder", [&] { return ::mkdir(other_.c_str(), 0700); }},
      {"make a pipe with a name", [&] { return ::mkfifo(other_.c_str(), 0700); }},
      {"a socket to the network", [] { return ::socket(AF_INET, SOCK_STREAM, 0); }},
      {"a socket to other programs", [] { return ::socket(AF_UNIX, SOCK_STREAM, 0); }},
      {"start a program",
       [] {
         char* const nothing[] = {nullptr};
         return ::execve("/bin/true", nothing, nothing);
       }},
      {"signal the parent", [] { return ::syscall(SYS_tgkill, ::getppid(), ::getppid(), 0); }},
      {"widen its own limits",
       [] {
         const rlimit none{RLIM_INFINITY, RLIM_INFINITY};
         return ::setrlimit(RLIMIT_CPU, &none);
       }},
      {"map new rights", [] { return ::syscall(SYS_unshare, 0x10000000); }},
#ifndef __SANITIZE_ADDRESS__
      {"fork", [] { return ::syscall(SYS_clone, SIGCHLD, nullptr, nullptr, nullptr, nullptr); }},
      {"signal another process", [] { return ::kill(::getppid(), 0); }},
#endif
  };
  for (const Case& c : cases) {
    EXPECT_EQ(Confined(c.act), EPERM) << c.what;
  }
  EXPECT_TRUE(std::filesystem::exists(file_));
  EXPECT_FALSE(std::filesystem::exists(other_));
}

TEST_F(Confinement, ACrashIsStillACrash) {
#ifndef __SANITIZE_ADDRESS__
  EXPECT_EQ(Confined([]() -> long { std::abort(); }), 1000 + SIGABRT);
#endif
  EXPECT_EQ(Confined([] { return ::syscall(SYS_tgkill, ::getpid(), ::getpid(), SIGKILL); }), 1000 + SIGKILL);
}

}  // namespace
}  // namespace benchleaf
