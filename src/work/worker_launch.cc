#include "work/worker_launch.h"

#include <fcntl.h>
#include <linux/close_range.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstring>
#include <string_view>
#include <utility>

namespace benchleaf {
namespace {

constexpr int kFirstFreeFd = 3;
// Debian's Tesseract is linked against OpenMP: without this, every worker would start a thread for each core.
constexpr std::string_view kOneThread = "OMP_THREAD_LIMIT=1";

// AddressSanitizer reserves terabytes of address space, so a sanitized program cannot run under RLIMIT_AS.
#ifdef __SANITIZE_ADDRESS__
constexpr bool kLimitAddressSpace = false;
#else
constexpr bool kLimitAddressSpace = true;
#endif

// What the child needs, made ready before fork: between fork and exec only async-signal-safe calls are allowed, which
// rules out anything that may take memory.
struct Child {
  const char* program = nullptr;
  std::vector<char*> arguments;    // ends with a null pointer
  std::vector<char*> environment;  // the same
  WorkerLimits limits;
  pid_t parent = 0;
  int talk = -1;
  int chatter = -1;
  int report = -1;  // takes errno when the program cannot be started; closed by a successful exec
};

bool SetLimit(__rlimit_resource_t resource, rlim_t soft, rlim_t hard) {
  const rlimit limit{soft, hard};
  return ::setrlimit(resource, &limit) == 0;
}

bool SetLimits(const WorkerLimits& limits) {
  const auto cpu = static_cast<rlim_t>(limits.cpu.count());
  const rlim_t address_space = static_cast<rlim_t>(limits.address_space_mib) << 20U;
  return SetLimit(RLIMIT_CORE, 0, 0) &&   // a crash is an expected outcome; cores of it would fill the disk
         SetLimit(RLIMIT_FSIZE, 0, 0) &&  // a worker writes to its parent only
         // SIGXCPU at the soft limit tells this end from others; a handler cannot put it off beyond the hard one.
         SetLimit(RLIMIT_CPU, cpu, cpu + 5) &&
         (!kLimitAddressSpace || SetLimit(RLIMIT_AS, address_space, address_space));
}

// Runs in the child and never returns. The filter of system calls comes later, from the program itself (confine.h):
// put up here, it could not forbid to start programs.
[[noreturn]] void BecomeWorker(const Child& child) {
  // A group of its own keeps Ctrl-C on the terminal for the parent, which then ends its workers in order.
  bool ready = ::setpgid(0, 0) == 0;
  ready = ready && ::prctl(PR_SET_PDEATHSIG, SIGKILL) == 0;
  if (::getppid() != child.parent) {
    ::_exit(1);  // the parent died before the line above took effect
  }
  ready = ready && ::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0;
  ready = ready && ::dup2(child.talk, STDIN_FILENO) >= 0 && ::dup2(child.talk, STDOUT_FILENO) >= 0 &&
          ::dup2(child.chatter, STDERR_FILENO) >= 0;
  // The program may have files open that were not marked for closing; an old kernel without this call is no failure.
  ::close_range(kFirstFreeFd, ~0U, CLOSE_RANGE_CLOEXEC);
  sigset_t none;
  ::sigemptyset(&none);
  ready = ready && ::sigprocmask(SIG_SETMASK, &none, nullptr) == 0;
  ready = ready && SetLimits(child.limits);
  if (ready) {
    ::execve(child.program, child.arguments.data(), child.environment.data());
  }
  const int reason = errno;
  // Should this fail too, the parent sees a worker that ends without a greeting.
  [[maybe_unused]] const ssize_t written = ::write(child.report, &reason, sizeof(reason));
  ::_exit(1);
}

// The same file under a number that does not collide with standard input, output and error, which the caller's process
// may have closed.
UniqueFd AboveStandard(UniqueFd fd) {
  if (!fd || fd.get() >= kFirstFreeFd) {
    return fd;
  }
  return UniqueFd(::fcntl(fd.get(), F_DUPFD_CLOEXEC, kFirstFreeFd));
}

struct Ends {
  UniqueFd first;
  UniqueFd second;
  explicit operator bool() const { return first && second; }
};

Ends MakeSocketPair() {
  int fds[2] = {-1, -1};
  if (::socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0, fds) != 0) {
    return {};
  }
  return {AboveStandard(UniqueFd(fds[0])), AboveStandard(UniqueFd(fds[1]))};
}

Ends MakePipe() {
  int fds[2] = {-1, -1};
  if (::pipe2(fds, O_CLOEXEC) != 0) {
    return {};
  }
  return {AboveStandard(UniqueFd(fds[0])), AboveStandard(UniqueFd(fds[1]))};
}

bool MakeNonBlocking(const UniqueFd& fd) {
  const int flags = ::fcntl(fd.get(), F_GETFL);
  return flags >= 0 && ::fcntl(fd.get(), F_SETFL, flags | O_NONBLOCK) == 0;
}

tl::unexpected<Error> CannotStart(const std::filesystem::path& program, int reason) {
  const ErrorCode code = reason == ENOENT ? ErrorCode::kMissing : ErrorCode::kIo;
  return Fail(code, std::string("a reader process cannot be started: ") + std::strerror(reason), program.string());
}

std::vector<std::string> Environment() {
  std::vector<std::string> variables;
  for (char** variable = environ; *variable != nullptr; ++variable) {
    if (!std::string_view(*variable).starts_with("OMP_THREAD_LIMIT=")) {
      variables.emplace_back(*variable);
    }
  }
  variables.emplace_back(kOneThread);
  return variables;
}

std::vector<char*> Pointers(std::vector<std::string>& texts) {
  std::vector<char*> pointers;
  pointers.reserve(texts.size() + 1);
  for (std::string& text : texts) {
    pointers.push_back(text.data());
  }
  pointers.push_back(nullptr);
  return pointers;
}

// The errno that the child reports, 0 when the program is running.
int AwaitExec(int report) {
  int reason = 0;
  ssize_t got = 0;
  do {
    got = ::read(report, &reason, sizeof(reason));
  } while (got < 0 && errno == EINTR);
  return got == static_cast<ssize_t>(sizeof(reason)) ? reason : 0;
}

}  // namespace

Result<LaunchedWorker> LaunchWorker(const std::filesystem::path& program, const std::vector<std::string>& arguments,
                                    const WorkerLimits& limits) {
  Ends talk = MakeSocketPair();
  Ends chatter = MakePipe();
  Ends report = MakePipe();
  if (!talk || !chatter || !report || !MakeNonBlocking(talk.first) || !MakeNonBlocking(chatter.first)) {
    return CannotStart(program, errno);
  }
  std::vector<std::string> words{program.string()};
  words.insert(words.end(), arguments.begin(), arguments.end());
  std::vector<std::string> variables = Environment();
  Child child;
  child.program = words.front().c_str();
  child.arguments = Pointers(words);
  child.environment = Pointers(variables);
  child.limits = limits;
  child.parent = ::getpid();
  child.talk = talk.second.get();
  child.chatter = chatter.second.get();
  child.report = report.second.get();

  const pid_t pid = ::fork();
  if (pid < 0) {
    return CannotStart(program, errno);
  }
  if (pid == 0) {
    BecomeWorker(child);
  }
  report.second.reset();
  if (const int reason = AwaitExec(report.first.get()); reason != 0) {
    ::waitpid(pid, nullptr, 0);
    return CannotStart(program, reason);
  }
  return LaunchedWorker{pid, std::move(talk.first), std::move(chatter.first)};
}

}  // namespace benchleaf
