// A feed of one task.

#ifndef BENCHLEAF_SRC_WORK_ONE_TASK_H_
#define BENCHLEAF_SRC_WORK_ONE_TASK_H_

#include "work/task.h"

#include <optional>
#include <utility>

namespace benchleaf {

class OneTask : public TaskFeed {
 public:
  explicit OneTask(Task task) : task_(std::move(task)) {}

  Result<std::optional<Task>> Next() override { return std::exchange(task_, std::nullopt); }
  Result<void> Done(const Task& /*task*/, TaskOutcome outcome) override {
    value_ = std::move(outcome.value);
    return {};
  }

  // REQUIRES: the task is done.
  TaskValue TakeValue() { return std::move(value_); }

 private:
  std::optional<Task> task_;
  TaskValue value_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_ONE_TASK_H_
