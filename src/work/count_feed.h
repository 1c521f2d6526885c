// Has the workers open files and count their pages.

#ifndef BENCHLEAF_SRC_WORK_COUNT_FEED_H_
#define BENCHLEAF_SRC_WORK_COUNT_FEED_H_

#include "work/plan.h"
#include "work/task.h"

#include "benchleaf/library/library.h"

#include <cstddef>
#include <filesystem>
#include <optional>
#include <utility>
#include <vector>

namespace benchleaf {

class CountFeed : public TaskFeed {
 public:
  // Both outlive the feed.
  CountFeed(const std::filesystem::path& library, const std::vector<const ScanFile*>& files)
      : library_(library), files_(files) {}

  Result<std::optional<Task>> Next() override;
  Result<void> Done(const Task& task, TaskOutcome outcome) override;

  PageCounts TakeCounts() { return std::move(counts_); }

 private:
  const std::filesystem::path& library_;
  const std::vector<const ScanFile*>& files_;
  std::size_t next_ = 0;
  PageCounts counts_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_COUNT_FEED_H_
