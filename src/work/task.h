// What workers are asked to do, and what becomes of it.

#ifndef BENCHLEAF_SRC_WORK_TASK_H_
#define BENCHLEAF_SRC_WORK_TASK_H_

#include "work/protocol.h"

#include "benchleaf/core/result.h"
#include "benchleaf/reading/page_reading.h"

#include <cstddef>
#include <optional>
#include <string>
#include <variant>

namespace benchleaf {

// One thing to be done by a worker.
struct Task {
  std::size_t id = 0;  // the feed's own
  Operation operation = Operation::kCountPages;
  int page = 0;          // as in Job
  int orientation = 0;   // for kPicturePage, as in Job
  int side = 0;          // likewise
  std::string path;      // where the file lies
  std::string name;      // what errors call it
  ViewedPart view = {};  // matters for kViewPage only
};

// A count for kCountPages and kCopyPages, a reading for kReadPage, a view for kViewPage, files for kPicturePage, a
// piece for kCopyPiece, or an error that names the task's file and page.
using TaskValue = std::variant<PageCount, PageReading, PageView, binder::PageFiles, CopyPiece, Error>;

struct TaskOutcome {
  TaskValue value;
  // Why the first try failed, when the worker crashed or ran out of time in it and a second one, in the plainer mode,
  // gave `value`.
  std::optional<Error> first_try;
};

// Where tasks come from and outcomes go to. An error that it gives ends the run.
class TaskFeed {
 public:
  virtual ~TaskFeed() = default;
  // The next task; nothing when there is none for now. Asked again after each outcome.
  virtual Result<std::optional<Task>> Next() = 0;
  virtual Result<void> Done(const Task& task, TaskOutcome outcome) = 0;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_TASK_H_
