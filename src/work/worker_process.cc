#include "work/worker_process.h"

#include "work/worker_launch.h"

#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <ctime>
#include <utility>

namespace benchleaf {
namespace {

constexpr std::size_t kChatterKept = 2048;  // bytes of standard error, from its end
constexpr std::size_t kLastLineKept = 200;

using Chunk = std::array<char, 65536>;

std::string LastLine(std::string_view text) {
  while (!text.empty() && (text.back() == '\n' || text.back() == '\r')) {
    text.remove_suffix(1);
  }
  if (const std::size_t newline = text.rfind('\n'); newline != std::string_view::npos) {
    text.remove_prefix(newline + 1);
  }
  std::string line(text.substr(0, kLastLineKept));
  std::erase_if(line, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
  return line;
}

// read(2) again after a signal.
ssize_t ReadSome(int fd, Chunk& chunk) {
  ssize_t got = 0;
  do {
    got = ::read(fd, chunk.data(), chunk.size());
  } while (got < 0 && errno == EINTR);
  return got;
}

}  // namespace

bool WorkerEnd::OutOfProcessorTime() const { return signal == SIGXCPU; }

std::string WorkerEnd::ToString() const {
  std::string text = signal != 0 ? "signal " + std::to_string(signal) : "exit code " + std::to_string(exit_code);
  // Only an ending that the program itself brought about says its reason; before any other one there is just chatter.
  const bool says_why = signal == SIGABRT || (signal == 0 && exit_code != 0);
  if (says_why && !last_line.empty()) {
    text += ": " + last_line;
  }
  return text;
}

WorkerProcess::WorkerProcess(pid_t pid, UniqueFd answers, UniqueFd chatter)
    : pid_(pid), answers_(std::move(answers)), chatter_(std::move(chatter)), messages_(kMaxAnswerBytes) {}

WorkerProcess::~WorkerProcess() { Stop(); }

Result<std::unique_ptr<WorkerProcess>> WorkerProcess::Start(const WorkerCommand& command) {
  Result<LaunchedWorker> launched =
      LaunchWorker(command.program, {"worker", "--config", command.config.string()}, command.limits);
  if (!launched) {
    return tl::unexpected(std::move(launched.error()));
  }
  return std::unique_ptr<WorkerProcess>(
      new WorkerProcess(launched->pid, std::move(launched->talk), std::move(launched->chatter)));
}

bool WorkerProcess::Send(std::string_view body) {
  const std::string message = Framed(body);
  // A job is far smaller than the socket's buffer, and the worker has none before it: a send that does not take all of
  // it means that the worker does not listen. MSG_NOSIGNAL: a worker's death must not raise SIGPIPE here.
  const ssize_t sent = ::send(answers_.get(), message.data(), message.size(), MSG_NOSIGNAL);
  return sent == static_cast<ssize_t>(message.size());
}

WorkerProcess::Intake WorkerProcess::Receive() {
  ReceiveChatter();
  // One chunk a call: a worker that writes without end must be noticed by its messages, not by the memory it fills.
  Chunk chunk;
  const ssize_t got = ReadSome(answers_.get(), chunk);
  if (got > 0) {
    messages_.Add({chunk.data(), static_cast<std::size_t>(got)});
    return Intake::kOpen;
  }
  const bool nothing_yet = got < 0 && (errno == EAGAIN || errno == EWOULDBLOCK);
  return nothing_yet ? Intake::kOpen : Intake::kEnded;
}

void WorkerProcess::ReceiveChatter() {
  if (!chatter_) {
    return;
  }
  Chunk chunk;
  const ssize_t got = ReadSome(chatter_.get(), chunk);
  if (got > 0) {
    chatter_tail_.append(chunk.data(), static_cast<std::size_t>(got));
    if (chatter_tail_.size() > kChatterKept) {
      chatter_tail_.erase(0, chatter_tail_.size() - kChatterKept);
    }
  } else if (got == 0) {
    chatter_.reset();
  }
}

std::chrono::duration<double> WorkerProcess::ProcessorTime() const {
  clockid_t clock = 0;
  timespec used{};
  if (pid_ == 0 || ::clock_getcpuclockid(pid_, &clock) != 0 || ::clock_gettime(clock, &used) != 0) {
    return {};
  }
  return std::chrono::seconds(used.tv_sec) + std::chrono::duration<double>(static_cast<double>(used.tv_nsec) * 1e-9);
}

WorkerEnd WorkerProcess::Stop() {
  WorkerEnd end;
  if (pid_ == 0) {
    return end;
  }
  // A process that is ending already keeps the status it is ending with.
  ::kill(pid_, SIGKILL);
  int status = 0;
  pid_t waited = 0;
  do {
    waited = ::waitpid(pid_, &status, 0);
  } while (waited < 0 && errno == EINTR);
  pid_ = 0;
  ReceiveChatter();
  end.last_line = LastLine(chatter_tail_);
  if (waited > 0 && WIFSIGNALED(status)) {
    end.signal = WTERMSIG(status);
  } else if (waited > 0 && WIFEXITED(status)) {
    end.exit_code = WEXITSTATUS(status);
  }
  return end;
}

}  // namespace benchleaf
