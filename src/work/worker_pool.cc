#include "work/worker_pool.h"

#include <poll.h>

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <optional>
#include <utility>

namespace benchleaf {
namespace {

using Clock = WorkerSlot::Clock;
using std::chrono::milliseconds;

constexpr milliseconds kLongestWait{100};

}  // namespace

WorkerPool::WorkerPool(const WorkerCommand& command, int workers) {
  for (int i = 0; i < workers; ++i) {
    slots_.emplace_back(command);
  }
}

Result<void> WorkerPool::Run(TaskFeed& feed, const std::atomic<bool>& cancel) {
  Result<void> done = RunUntilDone(feed, cancel);
  if (!done) {
    for (WorkerSlot& slot : slots_) {
      slot.Clear();
    }
  }
  return done;
}

Result<void> WorkerPool::RunUntilDone(TaskFeed& feed, const std::atomic<bool>& cancel) {
  Clock::time_point away_since = Clock::now();
  while (true) {
    if (cancel) {
      return Fail(ErrorCode::kCancelled, "stopped");
    }
    if (Result<void> given = GiveTasks(feed); !given) {
      return given;
    }
    if (std::none_of(slots_.begin(), slots_.end(), [](const WorkerSlot& slot) { return slot.busy(); })) {
      return {};
    }
    // The feed may have been busy for long with an outcome. A worker with a long answer had to wait meanwhile, which
    // must not count against it.
    for (WorkerSlot& slot : slots_) {
      slot.PutOff(Clock::now() - away_since);
    }
    Wait();
    away_since = Clock::now();
    if (Result<void> taken = TakeOutcomes(feed); !taken) {
      return taken;
    }
  }
}

Result<void> WorkerPool::GiveTasks(TaskFeed& feed) {
  for (WorkerSlot& slot : slots_) {
    if (slot.busy()) {
      continue;
    }
    Result<std::optional<Task>> task = feed.Next();
    if (!task) {
      return tl::unexpected(std::move(task.error()));
    }
    if (!*task) {
      return {};
    }
    if (Result<void> given = slot.Give(std::move(**task)); !given) {
      return given;
    }
  }
  return {};
}

void WorkerPool::Wait() const {
  std::vector<pollfd> waited;
  auto wait = kLongestWait;
  for (const WorkerSlot& slot : slots_) {
    if (slot.busy()) {
      slot.AppendTo(waited);
      wait = std::min(wait, std::chrono::ceil<milliseconds>(slot.deadline() - Clock::now()));
    }
  }
  ::poll(waited.data(), waited.size(), std::max(0, static_cast<int>(wait.count())));
}

// Listens to all workers before the feed gets any outcome, with which it may be busy until deadlines are over.
Result<void> WorkerPool::TakeOutcomes(TaskFeed& feed) {
  std::vector<std::pair<Task, TaskOutcome>> outcomes;
  for (WorkerSlot& slot : slots_) {
    if (!slot.busy()) {
      continue;
    }
    Task task = slot.task();
    Result<std::optional<TaskOutcome>> outcome = slot.Advance();
    if (!outcome) {
      return tl::unexpected(std::move(outcome.error()));
    }
    if (*outcome) {
      outcomes.emplace_back(std::move(task), std::move(**outcome));
    }
  }
  for (auto& [task, outcome] : outcomes) {
    if (Result<void> done = feed.Done(task, std::move(outcome)); !done) {
      return done;
    }
  }
  return {};
}

}  // namespace benchleaf
