#include "benchleaf/work/copy_manual.h"

#include "work/copy_plan.h"
#include "work/one_task.h"
#include "work/worker_pool.h"

#include "benchleaf/raster/file_beside.h"

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <string>
#include <utility>
#include <variant>

namespace benchleaf {
namespace {

// A page in colour may have to be packed again: some seconds each on an old machine.
WorkerLimits LimitsFor(std::size_t pages) {
  constexpr int kSecondsPerPage = 10;
  WorkerLimits limits;
  limits.deadline += std::chrono::seconds(kSecondsPerPage * pages);
  limits.cpu += std::chrono::seconds(kSecondsPerPage * pages);
  return limits;
}

Result<TaskValue> Do(WorkerPool& pool, const Task& task, const std::atomic<bool>& cancel) {
  OneTask feed(task);
  if (Result<void> done = pool.Run(feed, cancel); !done) {
    return tl::unexpected(std::move(done.error()));
  }
  TaskValue value = feed.TakeValue();
  if (auto* error = std::get_if<Error>(&value)) {
    error->page = 0;  // it is of the plan, or a piece's number
    return tl::unexpected(std::move(*error));
  }
  return value;
}

// Has the worker take one page after the other. A worker that had to begin again takes those before it once more.
Result<void> CopyPages(WorkerPool& pool, Task task, const std::vector<PageToCopy>& pages, const CopyOptions& options,
                       const std::atomic<bool>& cancel) {
  task.operation = Operation::kCopyPages;
  // The few that a job cannot name are taken with the first piece.
  const std::size_t named = std::min(pages.size(), static_cast<std::size_t>(kMaxPagesPerFile));
  for (std::size_t i = 0; i < named; ++i) {
    task.page = static_cast<int>(i) + 1;
    if (const auto done = Do(pool, task, cancel); !done) {
      Error error = done.error();
      if (error.code == ErrorCode::kCrashed || error.code == ErrorCode::kTimeout) {
        error.source = pages[i].name;
        error.page = pages[i].page;
      }
      return tl::unexpected(std::move(error));
    }
    options.taken(pages[i]);
  }
  return {};
}

}  // namespace

Result<std::vector<Error>> CopyManual(const std::vector<PageToCopy>& pages, const std::filesystem::path& out,
                                      const CopyOptions& options, const std::atomic<bool>& cancel) {
  FileBeside plan(out);  // never put in its place
  if (Result<void> written = plan.Write(EncodeCopyPlan(pages)); !written) {
    return tl::unexpected(written.error());
  }
  FileBeside copy(out);
  WorkerPool pool({options.program, options.config, LimitsFor(pages.size())}, 1);
  Task task;
  task.path = std::filesystem::absolute(plan.path()).string();
  task.name = out.string();
  if (Result<void> taken = CopyPages(pool, task, pages, options, cancel); !taken) {
    return tl::unexpected(taken.error());
  }
  task.operation = Operation::kCopyPiece;
  std::string digest;
  std::vector<Error> left_out;
  int pieces = 1;
  for (task.page = 1; task.page <= pieces; ++task.page) {
    auto done = Do(pool, task, cancel);
    if (!done) {
      return tl::unexpected(done.error());
    }
    auto* piece = &std::get<CopyPiece>(*done);
    if (task.page > 1 && piece->digest != digest) {
      return Fail(ErrorCode::kCrashed, "the reader had to begin again and came to another result; try again",
                  out.string());
    }
    if (Result<void> written = copy.Write(piece->bytes); !written) {
      return tl::unexpected(written.error());
    }
    pieces = piece->pieces;
    digest = piece->digest;
    left_out = std::move(piece->left_out);
  }
  if (Result<void> placed = copy.TakeTargetsPlace(); !placed) {
    return tl::unexpected(placed.error());
  }
  return left_out;
}

}  // namespace benchleaf
