#include "benchleaf/work/copy_manual.h"

#include "work/copy_plan.h"
#include "work/one_task.h"
#include "work/worker_pool.h"

#include "benchleaf/raster/file_beside.h"

#include <chrono>
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

Result<CopyPiece> Fetch(WorkerPool& pool, Task task, const std::atomic<bool>& cancel) {
  OneTask feed(std::move(task));
  if (Result<void> done = pool.Run(feed, cancel); !done) {
    return tl::unexpected(std::move(done.error()));
  }
  TaskValue value = feed.TakeValue();
  if (auto* error = std::get_if<Error>(&value)) {
    error->page = 0;  // the piece's number
    return tl::unexpected(std::move(*error));
  }
  return std::get<CopyPiece>(std::move(value));
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
  task.operation = Operation::kCopyPiece;
  task.path = std::filesystem::absolute(plan.path()).string();
  task.name = out.string();
  std::string digest;
  std::vector<Error> left_out;
  int pieces = 1;
  for (task.page = 1; task.page <= pieces; ++task.page) {
    auto piece = Fetch(pool, task, cancel);
    if (!piece) {
      return tl::unexpected(piece.error());
    }
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
