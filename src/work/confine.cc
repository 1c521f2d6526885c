#include "work/confine.h"

#include <fcntl.h>
#include <seccomp.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdint>
#include <cstring>
#include <memory>
#include <string>
#include <type_traits>

namespace benchleaf {
namespace {

struct ReleaseFilter {
  void operator()(scmp_filter_ctx filter) const { ::seccomp_release(filter); }
};
using Filter = std::unique_ptr<std::remove_pointer_t<scmp_filter_ctx>, ReleaseFilter>;

// What reading and thinking takes, whatever the arguments. What is not named is refused: a list of what is forbidden
// would miss the next kernel's new calls.
constexpr std::array kHarmless = {
    // open descriptors
    SCMP_SYS(read),
    SCMP_SYS(readv),
    SCMP_SYS(pread64),
    SCMP_SYS(preadv),
    SCMP_SYS(write),
    SCMP_SYS(writev),
    SCMP_SYS(close),
    SCMP_SYS(lseek),
    SCMP_SYS(dup),
    SCMP_SYS(dup2),
    SCMP_SYS(dup3),
    SCMP_SYS(fcntl),
    SCMP_SYS(poll),
    SCMP_SYS(ppoll),
    SCMP_SYS(fadvise64),
    // looking at files and folders
    SCMP_SYS(stat),
    SCMP_SYS(lstat),
    SCMP_SYS(fstat),
    SCMP_SYS(newfstatat),
    SCMP_SYS(statx),
    SCMP_SYS(statfs),
    SCMP_SYS(fstatfs),
    SCMP_SYS(access),
    SCMP_SYS(faccessat),
    SCMP_SYS(faccessat2),
    SCMP_SYS(readlink),
    SCMP_SYS(readlinkat),
    SCMP_SYS(getdents64),
    SCMP_SYS(getcwd),
    // memory
    SCMP_SYS(mmap),
    SCMP_SYS(munmap),
    SCMP_SYS(mprotect),
    SCMP_SYS(mremap),
    SCMP_SYS(madvise),
    SCMP_SYS(brk),
    // itself
    SCMP_SYS(getpid),
    SCMP_SYS(gettid),
    SCMP_SYS(getppid),
    SCMP_SYS(getuid),
    SCMP_SYS(geteuid),
    SCMP_SYS(getgid),
    SCMP_SYS(getegid),
    SCMP_SYS(getrlimit),
    SCMP_SYS(getrusage),
    SCMP_SYS(sched_getaffinity),
    SCMP_SYS(sched_yield),
    SCMP_SYS(rt_sigaction),
    SCMP_SYS(rt_sigprocmask),
    SCMP_SYS(rt_sigreturn),
    SCMP_SYS(sigaltstack),
    SCMP_SYS(futex),
    SCMP_SYS(set_robust_list),
    SCMP_SYS(rseq),
    SCMP_SYS(membarrier),
    SCMP_SYS(restart_syscall),
    SCMP_SYS(exit),
    SCMP_SYS(exit_group),
    // the machine
    SCMP_SYS(uname),
    SCMP_SYS(sysinfo),
    SCMP_SYS(getrandom),
    SCMP_SYS(time),
    SCMP_SYS(times),
    SCMP_SYS(gettimeofday),
    SCMP_SYS(clock_gettime),
    SCMP_SYS(clock_getres),
    SCMP_SYS(nanosleep),
    SCMP_SYS(clock_nanosleep),
#ifdef __SANITIZE_ADDRESS__
    // The search for leaks at the process's end runs in a helper that stops the others.
    SCMP_SYS(clone),
    SCMP_SYS(ptrace),
    SCMP_SYS(prctl),
    SCMP_SYS(wait4),
    SCMP_SYS(kill),
#endif
};

bool Allow(const Filter& filter, int call) { return ::seccomp_rule_add(filter.get(), SCMP_ACT_ALLOW, call, 0) == 0; }

template <class... Conditions>
bool AllowIf(const Filter& filter, int call, Conditions... conditions) {
  return ::seccomp_rule_add(filter.get(), SCMP_ACT_ALLOW, call, sizeof...(conditions), conditions...) == 0;
}

// Opening for reading: none of the flags that write, make or empty a file. `flags_at` is the place of the flags among
// the arguments.
bool AllowReading(const Filter& filter, int call, unsigned flags_at) {
  constexpr auto kWriting = static_cast<std::uint64_t>(O_ACCMODE | O_CREAT | O_TRUNC | O_APPEND);
  return AllowIf(filter, call, scmp_arg_cmp{flags_at, SCMP_CMP_MASKED_EQ, kWriting, O_RDONLY});
}

bool AddRules(const Filter& filter) {
  for (const int call : kHarmless) {
    if (!Allow(filter, call)) {
      return false;
    }
  }
  const auto self = static_cast<std::uint64_t>(::getpid());
  return AllowReading(filter, SCMP_SYS(openat), 2) && AllowReading(filter, SCMP_SYS(open), 1) &&
         // abort() signals its own process.
         AllowIf(filter, SCMP_SYS(tgkill), scmp_arg_cmp{0, SCMP_CMP_EQ, self, 0}) &&
         // Asking for a limit, not setting one.
         AllowIf(filter, SCMP_SYS(prlimit64), scmp_arg_cmp{2, SCMP_CMP_EQ, 0, 0});
}

tl::unexpected<Error> NotConfined(int reason) {
  return Fail(ErrorCode::kUnsupported, std::string("the reader cannot be locked in, so it opens no scan; the system "
                                                   "refuses a filter of system calls (seccomp): ") +
                                           std::strerror(reason));
}

}  // namespace

Result<void> ConfineToReading() {
  const Filter filter(::seccomp_init(SCMP_ACT_ERRNO(EPERM)));
  if (!filter || !AddRules(filter)) {
    return NotConfined(ENOMEM);
  }
  // This also sets PR_SET_NO_NEW_PRIVS, without which the kernel takes no filter.
  const int loaded = ::seccomp_load(filter.get());
  if (loaded != 0) {
    return NotConfined(-loaded);
  }
  return {};
}

}  // namespace benchleaf
