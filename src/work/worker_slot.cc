#include "work/worker_slot.h"

#include <algorithm>
#include <utility>

namespace benchleaf {
namespace {

using std::chrono::seconds;

constexpr seconds kGreetingAllowance{60};
// A new process from time to time bounds what the leaks of a worker's libraries can add up to.
constexpr int kJobsPerWorker = 500;

std::string Seconds(seconds time) { return std::to_string(time.count()) + " s"; }

}  // namespace

Result<void> WorkerSlot::Give(Task task) {
  task_ = std::move(task);
  first_try_.reset();
  if (worker_ && (IsUsedUp() || !IsReady())) {
    worker_.reset();
  }
  if (!worker_) {
    return StartWorker();
  }
  SendJob();
  return {};
}

Result<void> WorkerSlot::StartWorker() {
  greeted_ = false;
  answered_ = 0;
  Result<std::unique_ptr<WorkerProcess>> started = WorkerProcess::Start(command_);
  if (!started) {
    return tl::unexpected(std::move(started.error()));
  }
  worker_ = std::move(*started);
  deadline_ = Clock::now() + kGreetingAllowance;
  return {};
}

// A job that cannot be sent needs no handling here: the worker is gone or deaf, and Advance() finds that out.
void WorkerSlot::SendJob() {
  const ReadingMode mode = first_try_ ? ReadingMode::kPlain : ReadingMode::kFull;
  worker_->Send(EncodeJob(Job{++job_number_, task_->operation, mode, task_->page, task_->orientation, task_->side,
                              task_->path, task_->name, task_->view}));
  deadline_ = Clock::now() + command_.limits.deadline;
}

void WorkerSlot::AppendTo(std::vector<pollfd>& waited) const {
  if (busy() && worker_) {
    waited.push_back({worker_->answers_fd(), POLLIN, 0});
    if (worker_->chatter_fd() >= 0) {
      waited.push_back({worker_->chatter_fd(), POLLIN, 0});
    }
  }
}

Result<std::optional<TaskOutcome>> WorkerSlot::Advance() {
  if (!busy()) {
    return std::nullopt;
  }
  const WorkerProcess::Intake intake = worker_->Receive();
  Result<std::optional<std::string>> message = worker_->NextMessage();
  if (!message) {
    return AfterNonsense();
  }
  if (*message) {
    return TakeMessage(**message);
  }
  if (intake == WorkerProcess::Intake::kEnded) {
    return AfterEnd();
  }
  if (Clock::now() >= deadline_) {
    return AfterDeadline();
  }
  return std::nullopt;
}

Result<std::optional<TaskOutcome>> WorkerSlot::TakeMessage(const std::string& body) {
  if (!greeted_) {
    if (!IsGreeting(body)) {
      return AfterNonsense();
    }
    greeted_ = true;
    SendJob();
    return std::nullopt;
  }
  Result<Answer> answer = DecodeAnswer(body);
  if (!answer || answer->number != job_number_) {
    return AfterNonsense();
  }
  return TakeAnswer(std::move(*answer));
}

Result<std::optional<TaskOutcome>> WorkerSlot::TakeAnswer(Answer answer) {
  if (auto* unfit = std::get_if<Unfit>(&answer.outcome)) {
    return tl::unexpected(std::move(unfit->error));
  }
  if (auto* error = std::get_if<Error>(&answer.outcome)) {
    // A worker that caught its own crash cannot be relied on afterwards.
    if (error->code == ErrorCode::kCrashed) {
      return Lose(ErrorCode::kCrashed, error->message);
    }
    return Finish(TaskError(error->code, std::move(error->message)));
  }
  if (auto* count = std::get_if<PageCount>(&answer.outcome);
      count && (task_->operation == Operation::kCountPages || task_->operation == Operation::kCopyPages)) {
    return Finish(*count);
  }
  if (auto* reading = std::get_if<PageReading>(&answer.outcome); reading && task_->operation == Operation::kReadPage) {
    return Finish(std::move(*reading));
  }
  if (auto* view = std::get_if<PageView>(&answer.outcome); view && task_->operation == Operation::kViewPage) {
    return Finish(std::move(*view));
  }
  if (auto* piece = std::get_if<CopyPiece>(&answer.outcome); piece && task_->operation == Operation::kCopyPiece) {
    return Finish(std::move(*piece));
  }
  if (auto* files = std::get_if<binder::PageFiles>(&answer.outcome);
      files && task_->operation == Operation::kPicturePage) {
    return Finish(std::move(*files));
  }
  return Lose(ErrorCode::kCrashed, "the reader answered another question");
}

Result<std::optional<TaskOutcome>> WorkerSlot::AfterNonsense() {
  if (!greeted_) {
    return Fail(ErrorCode::kUsage, "this program is no reader of this version of benchleaf", command_.program.string());
  }
  return Lose(ErrorCode::kCrashed, "the reader sent what cannot be understood");
}

Result<std::optional<TaskOutcome>> WorkerSlot::AfterEnd() {
  const WorkerEnd end = worker_->Stop();
  if (!greeted_) {
    return Fail(ErrorCode::kCrashed, "the reader does not start (" + end.ToString() + ")", command_.program.string());
  }
  if (end.OutOfProcessorTime()) {
    return Lose(ErrorCode::kTimeout, "used more than " + Seconds(command_.limits.cpu) + " of processor time");
  }
  return Lose(ErrorCode::kCrashed, "reader died (" + end.ToString() + ")");
}

Result<std::optional<TaskOutcome>> WorkerSlot::AfterDeadline() {
  if (!greeted_) {
    return Fail(ErrorCode::kTimeout, "the reader does not start within " + Seconds(kGreetingAllowance),
                command_.program.string());
  }
  return Lose(ErrorCode::kTimeout, "took longer than " + Seconds(command_.limits.deadline));
}

Result<std::optional<TaskOutcome>> WorkerSlot::Lose(ErrorCode code, const std::string& reason) {
  worker_.reset();
  Error error = TaskError(code, reason);
  if (first_try_) {
    return Finish(std::move(error));
  }
  first_try_ = std::move(error);
  if (Result<void> started = StartWorker(); !started) {
    return tl::unexpected(std::move(started.error()));
  }
  return std::nullopt;
}

TaskOutcome WorkerSlot::Finish(TaskValue value) {
  ++answered_;
  task_.reset();
  return TaskOutcome{std::move(value), std::exchange(first_try_, std::nullopt)};
}

// A worker that died since its last task, or talks without being asked, must not cost the next page.
bool WorkerSlot::IsReady() {
  if (worker_->Receive() == WorkerProcess::Intake::kEnded) {
    return false;
  }
  const Result<std::optional<std::string>> message = worker_->NextMessage();
  return message && !*message;
}

// The limit of processor time counts from the start of the process. Between two tasks there is time to replace a
// worker that might reach it, by no fault of the page, in its next one.
bool WorkerSlot::IsUsedUp() const {
  const WorkerLimits& limits = command_.limits;
  const seconds budget = std::max(limits.cpu / 2, limits.cpu - limits.deadline);
  return answered_ >= kJobsPerWorker || worker_->ProcessorTime() > budget;
}

Error WorkerSlot::TaskError(ErrorCode code, std::string message) const {
  return Error{code, std::move(message), task_->name, task_->page};
}

void WorkerSlot::Clear() {
  worker_.reset();
  task_.reset();
  first_try_.reset();
}

}  // namespace benchleaf
