// To be preloaded: lets the Nth call of one kind fail, or kills the process over it. BENCHLEAF_FAULT says which, as
// CALL:N:ACT: CALL is write, sync, open, rename, remove or allocate; N counts from 1; ACT is
//   an errno number   the call does nothing and fails with it, and so does every one of its kind after it, as on a disk
//                     that stays full
//   once-ERRNO        only this one fails
//   kill              the process is killed before the call
//   tear              half of a write is done, then the process is killed, as when the power goes
//   count             nothing happens; at the end, the number of calls is appended to the file BENCHLEAF_FAULT_COUNT
// Only calls that touch files below the folder BENCHLEAF_FAULT_BELOW count, and memory that is asked for after the
// first of these was opened: before, libraries set themselves up. Programs that the process starts are left alone.

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/types.h>
#include <sys/uio.h>
#include <unistd.h>

#include <array>
#include <atomic>
#include <cerrno>
#include <climits>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string>
#include <string_view>

namespace {

enum class Act { kNone, kFail, kFailOnce, kKill, kTear, kCount };

struct Fault {
  std::string call;
  long number = 0;
  Act act = Act::kNone;
  int error = 0;
  std::string below;
  std::string count_file;
};

std::atomic<long> calls{0};
std::atomic<bool> begun{false};  // a file below the folder was opened

Fault ReadFault() {
  Fault fault;
  const char* const text = std::getenv("BENCHLEAF_FAULT");
  const char* const below = std::getenv("BENCHLEAF_FAULT_BELOW");
  if (text == nullptr || below == nullptr) {
    return fault;
  }
  const std::string_view all = text;
  const std::size_t first = all.find(':');
  const std::size_t second = all.find(':', first + 1);
  fault.call = all.substr(0, first);
  fault.number = std::atol(std::string(all.substr(first + 1, second - first - 1)).c_str());
  const std::string act(all.substr(second + 1));
  fault.below = below;
  if (act == "kill") {
    fault.act = Act::kKill;
  } else if (act == "tear") {
    fault.act = Act::kTear;
  } else if (act == "count") {
    fault.act = Act::kCount;
    fault.count_file = std::getenv("BENCHLEAF_FAULT_COUNT");
  } else if (act.rfind("once-", 0) == 0) {
    fault.act = Act::kFailOnce;
    fault.error = std::atoi(act.c_str() + 5);
  } else {
    fault.act = Act::kFail;
    fault.error = std::atoi(act.c_str());
  }
  ::unsetenv("LD_PRELOAD");
  ::unsetenv("BENCHLEAF_FAULT");
  return fault;
}

const Fault& TheFault() {
  static const Fault fault = ReadFault();
  return fault;
}

// Before the program starts others.
[[gnu::constructor]] void Begin() { TheFault(); }

[[gnu::destructor]] void End() {
  const Fault& fault = TheFault();
  if (fault.act != Act::kCount) {
    return;
  }
  if (std::FILE* const file = std::fopen(fault.count_file.c_str(), "a")) {
    std::fprintf(file, "%ld\n", calls.load());
    std::fclose(file);
  }
}

template <class Function>
Function* Real(const char* name) {
  return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

bool IsBelow(const char* path) { return std::string_view(path).rfind(TheFault().below, 0) == 0; }

bool IsBelow(int descriptor) {
  std::array<char, PATH_MAX> path{};
  const std::string link = "/proc/self/fd/" + std::to_string(descriptor);
  return ::readlink(link.c_str(), path.data(), path.size() - 1) > 0 && IsBelow(path.data());
}

// Whether the call is to fail, with errno set. Kills the process when the time has come.
bool Fails(const char* call, bool touches) {
  const Fault& fault = TheFault();
  if (fault.act == Act::kNone || fault.call != call || !touches) {
    return false;
  }
  const long number = ++calls;
  if (number == fault.number && fault.act == Act::kKill) {
    ::kill(::getpid(), SIGKILL);
  }
  const bool fails =
      (number == fault.number && fault.act == Act::kFailOnce) || (number >= fault.number && fault.act == Act::kFail);
  if (fails) {
    errno = fault.error;
  }
  return fails;
}

bool Tears() { return TheFault().act == Act::kTear && calls == TheFault().number; }

int OpenWith(const char* name, const char* path, int flags, mode_t mode) {
  const bool below = IsBelow(path);
  if (Fails("open", below)) {
    return -1;
  }
  if (below && TheFault().call == "allocate") begun = true;
  return Real<int(const char*, int, ...)>(name)(path, flags, mode);
}

mode_t ModeIn(int flags, va_list arguments) {
  return (flags & (O_CREAT | O_TMPFILE)) != 0 ? va_arg(arguments, mode_t) : 0;
}

bool IsOutOfMemory() { return begun && Fails("allocate", true); }

}  // namespace

extern "C" {

#ifndef __SANITIZE_ADDRESS__  // which stands before them itself
// The C library's own, by the names under which it offers them to whoever stands before them.
void* __libc_malloc(size_t size);
void* __libc_calloc(size_t count, size_t size);
void* __libc_realloc(void* memory, size_t size);

void* malloc(size_t size) { return IsOutOfMemory() ? nullptr : __libc_malloc(size); }

void* calloc(size_t count, size_t size) { return IsOutOfMemory() ? nullptr : __libc_calloc(count, size); }

void* realloc(void* memory, size_t size) { return IsOutOfMemory() ? nullptr : __libc_realloc(memory, size); }
#endif

ssize_t write(int descriptor, const void* bytes, size_t size) {
  const auto real = Real<ssize_t(int, const void*, size_t)>("write");
  if (Fails("write", IsBelow(descriptor))) {
    return -1;
  }
  if (Tears() && IsBelow(descriptor)) {
    real(descriptor, bytes, size / 2);
    ::kill(::getpid(), SIGKILL);
  }
  return real(descriptor, bytes, size);
}

ssize_t pwrite64(int descriptor, const void* bytes, size_t size, off64_t offset) {
  const auto real = Real<ssize_t(int, const void*, size_t, off64_t)>("pwrite64");
  if (Fails("write", IsBelow(descriptor))) {
    return -1;
  }
  if (Tears() && IsBelow(descriptor)) {
    real(descriptor, bytes, size / 2, offset);
    ::kill(::getpid(), SIGKILL);
  }
  return real(descriptor, bytes, size, offset);
}

ssize_t pwrite(int descriptor, const void* bytes, size_t size, off_t offset) {
  return pwrite64(descriptor, bytes, size, offset);
}

ssize_t writev(int descriptor, const iovec* parts, int count) {
  return Fails("write", IsBelow(descriptor))
             ? -1
             : Real<ssize_t(int, const iovec*, int)>("writev")(descriptor, parts, count);
}

int fsync(int descriptor) { return Fails("sync", IsBelow(descriptor)) ? -1 : Real<int(int)>("fsync")(descriptor); }

int fdatasync(int descriptor) {
  return Fails("sync", IsBelow(descriptor)) ? -1 : Real<int(int)>("fdatasync")(descriptor);
}

int open(const char* path, int flags, ...) {
  va_list arguments;
  va_start(arguments, flags);
  const mode_t mode = ModeIn(flags, arguments);
  va_end(arguments);
  return OpenWith("open", path, flags, mode);
}

int open64(const char* path, int flags, ...) {
  va_list arguments;
  va_start(arguments, flags);
  const mode_t mode = ModeIn(flags, arguments);
  va_end(arguments);
  return OpenWith("open64", path, flags, mode);
}

std::FILE* fopen64(const char* path, const char* mode) {
  return Fails("open", IsBelow(path)) ? nullptr : Real<std::FILE*(const char*, const char*)>("fopen64")(path, mode);
}

int rename(const char* from, const char* to) {
  return Fails("rename", IsBelow(to)) ? -1 : Real<int(const char*, const char*)>("rename")(from, to);
}

int remove(const char* path) { return Fails("remove", IsBelow(path)) ? -1 : Real<int(const char*)>("remove")(path); }
}
