// One worker process: started with its limits, talked to over a socket, ended at any moment.

#ifndef BENCHLEAF_SRC_WORK_WORKER_PROCESS_H_
#define BENCHLEAF_SRC_WORK_WORKER_PROCESS_H_

#include "work/protocol.h"
#include "work/unique_fd.h"

#include "benchleaf/core/result.h"
#include "benchleaf/work/index_library.h"

#include <sys/types.h>

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace benchleaf {

// The worker is started as `program worker --config CONFIG`.
struct WorkerCommand {
  std::filesystem::path program;
  std::filesystem::path config;
  WorkerLimits limits;
};

// How a process ended.
struct WorkerEnd {
  int signal = 0;         // 0 when it ended by itself
  int exit_code = 0;      // matters when `signal` is 0
  std::string last_line;  // of what it wrote to standard error, control characters left out

  // It ran into RLIMIT_CPU.
  bool OutOfProcessorTime() const;
  // "signal 11", "exit code 3", with the last line where that explains it.
  std::string ToString() const;
};

// The destructor kills the process and waits for its end, so no worker outlives its owner; should this process be
// killed, the kernel kills the worker (which ties a worker to the thread that started it: start and use it on one).
class WorkerProcess {
 public:
  // Fails with kMissing or kIo when the program cannot be started.
  static Result<std::unique_ptr<WorkerProcess>> Start(const WorkerCommand& command);
  ~WorkerProcess();
  WorkerProcess(const WorkerProcess&) = delete;
  WorkerProcess& operator=(const WorkerProcess&) = delete;

  // To be waited on for reading; both belong to this object.
  int answers_fd() const { return answers_.get(); }
  int chatter_fd() const { return chatter_.get(); }  // -1 once the worker has closed its standard error

  // Sends the body as one message, without waiting. False when the worker is gone or takes nothing in.
  bool Send(std::string_view body);

  // Takes in some of what has arrived, without waiting; call again while the descriptors are ready. kEnded when the
  // worker has closed its side and everything it sent has been taken in.
  enum class Intake { kOpen, kEnded };
  Intake Receive();

  // The next message from the worker; see MessageReader::Next.
  Result<std::optional<std::string>> NextMessage() { return messages_.Next(); }

  // Processor time used since the start.
  std::chrono::duration<double> ProcessorTime() const;

  // Kills the process unless it has ended, waits for it, and tells how it ended.
  WorkerEnd Stop();

 private:
  WorkerProcess(pid_t pid, UniqueFd answers, UniqueFd chatter);
  void ReceiveChatter();

  pid_t pid_;  // 0 once its end has been waited for
  UniqueFd answers_;
  UniqueFd chatter_;
  MessageReader messages_;
  std::string chatter_tail_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_WORKER_PROCESS_H_
