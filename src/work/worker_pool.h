// Hands tasks to worker processes, several at a time, and gets an outcome for every one of them, whatever becomes of
// the worker.

#ifndef BENCHLEAF_SRC_WORK_WORKER_POOL_H_
#define BENCHLEAF_SRC_WORK_WORKER_POOL_H_

#include "work/task.h"
#include "work/worker_process.h"
#include "work/worker_slot.h"

#include "benchleaf/core/result.h"

#include <atomic>
#include <vector>

namespace benchleaf {

// Uses the thread that calls it and no other. The destructor kills the workers.
class WorkerPool {
 public:
  // Starts no process yet.
  // REQUIRES: workers >= 1
  WorkerPool(const WorkerCommand& command, int workers);

  // Runs until the feed has no more tasks and none is under way; workers stay for the next run. How a failed task is
  // tried again is told at WorkerSlot::Advance.
  //
  // Fails with kCancelled at most a tenth of a second after `cancel` is set, with the feed's error, and when workers
  // cannot work at all (no such program, one that is no worker, language data missing). All workers are killed then.
  Result<void> Run(TaskFeed& feed, const std::atomic<bool>& cancel);

 private:
  Result<void> RunUntilDone(TaskFeed& feed, const std::atomic<bool>& cancel);
  Result<void> GiveTasks(TaskFeed& feed);
  // Until a worker says something, a deadline is reached, or a tenth of a second is over.
  void Wait() const;
  Result<void> TakeOutcomes(TaskFeed& feed);

  std::vector<WorkerSlot> slots_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_WORKER_POOL_H_
