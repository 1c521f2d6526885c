#include "work/count_feed.h"

#include <variant>

namespace benchleaf {

Result<std::optional<Task>> CountFeed::Next() {
  if (next_ == files_.size()) {
    return std::nullopt;
  }
  const ScanFile& file = *files_[next_];
  Task task;
  task.id = next_++;
  task.operation = Operation::kCountPages;
  task.path = (library_ / file.path).string();
  task.name = file.path;
  return task;
}

Result<void> CountFeed::Done(const Task& task, TaskOutcome outcome) {
  if (auto* error = std::get_if<Error>(&outcome.value)) {
    counts_.insert_or_assign(task.name, tl::unexpected(std::move(*error)));
  } else {
    counts_.insert_or_assign(task.name, std::get<PageCount>(outcome.value).pages);
  }
  return {};
}

}  // namespace benchleaf
