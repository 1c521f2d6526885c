// A place for one worker process: starts it when there is a task, watches its time, replaces it when it fails.

#ifndef BENCHLEAF_SRC_WORK_WORKER_SLOT_H_
#define BENCHLEAF_SRC_WORK_WORKER_SLOT_H_

#include "work/task.h"
#include "work/worker_process.h"

#include "benchleaf/core/result.h"

#include <poll.h>

#include <chrono>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {

class WorkerSlot {
 public:
  using Clock = std::chrono::steady_clock;

  explicit WorkerSlot(WorkerCommand command) : command_(std::move(command)) {}

  bool busy() const { return task_.has_value(); }
  // REQUIRES: busy()
  const Task& task() const { return *task_; }
  Clock::time_point deadline() const { return deadline_; }

  // Fails when the program cannot be started.
  // REQUIRES: !busy()
  Result<void> Give(Task task);

  // What to wait on for the worker to say something.
  void AppendTo(std::vector<pollfd>& waited) const;

  // Takes in what the worker says and looks at the clock, without waiting. Gives the outcome when the task has one;
  // the slot is then free. A task whose worker crashes, runs out of time or answers with nonsense is first tried once
  // more, in the plainer mode and in a new process. Fails when workers cannot work at all: a program that is no worker
  // of this version, or a worker that declares itself unfit.
  Result<std::optional<TaskOutcome>> Advance();

  // Gives the worker more time, for a while in which nobody was listening to it.
  void PutOff(Clock::duration by) { deadline_ += by; }

  // Kills the worker and forgets the task.
  void Clear();

 private:
  Result<void> StartWorker();
  void SendJob();
  Result<std::optional<TaskOutcome>> TakeMessage(const std::string& body);
  Result<std::optional<TaskOutcome>> TakeAnswer(Answer answer);
  // The worker is lost with its task: tries it again, or gives up.
  Result<std::optional<TaskOutcome>> Lose(ErrorCode code, const std::string& reason);
  Result<std::optional<TaskOutcome>> AfterNonsense();
  Result<std::optional<TaskOutcome>> AfterEnd();
  Result<std::optional<TaskOutcome>> AfterDeadline();
  TaskOutcome Finish(TaskValue value);
  bool IsReady();
  bool IsUsedUp() const;
  Error TaskError(ErrorCode code, std::string message) const;

  WorkerCommand command_;
  std::unique_ptr<WorkerProcess> worker_;
  bool greeted_ = false;  // `worker_` has said that it is one
  int answered_ = 0;      // jobs of `worker_`
  std::optional<Task> task_;
  std::optional<Error> first_try_;  // set while `task_` is tried for the second time
  std::uint32_t job_number_ = 0;
  Clock::time_point deadline_;  // of the greeting, then of the job
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_WORKER_SLOT_H_
