// Feeds the pages of all manuals to the workers, and stores each manual as soon as its last page has come back.

#ifndef BENCHLEAF_SRC_WORK_MANUAL_FEED_H_
#define BENCHLEAF_SRC_WORK_MANUAL_FEED_H_

#include "work/plan.h"
#include "work/task.h"

#include "benchleaf/core/result.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/record/manual_record.h"
#include "benchleaf/store/index_writer.h"
#include "benchleaf/work/index_library.h"

#include <atomic>
#include <cstddef>
#include <deque>
#include <filesystem>
#include <future>
#include <map>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace benchleaf {

// What manuals are stored with; everything outlives the feed.
struct StoringTools {
  const std::filesystem::path& library;
  IndexWriter& writer;
  const Rules& rules;
  IndexObserver& observer;
  const std::atomic<bool>& cancel;
  int threads;  // that search manuals, at least 1
};

// What came of it.
struct StoringResult {
  int pages_read = 0;
  int pages_known = 0;
  int pages_gained = 0;                                // by which the index grew; less than 0 when it shrank
  std::map<std::size_t, std::vector<Error>> problems;  // by the manual's position among the plans
};

// Manuals are taken up one after the other, the next when all pages of those before have been handed out: so pages of
// few manuals are held in memory, and no worker waits for the end of a manual. What is stored of a manual depends on
// its pages alone, not on the order in which workers bring them back.
class ManualFeed : public TaskFeed {
 public:
  // Takes up the plans whose work is kAssemble; those that take pages from other manuals come first.
  ManualFeed(const std::vector<ManualPlan>& plans, const IndexOutline& outline, const StoringTools& tools);

  // Fails as the writer does, and with kCancelled.
  Result<std::optional<Task>> Next() override;
  Result<void> Done(const Task& task, TaskOutcome outcome) override;

  StoringResult TakeResult() { return std::move(result_); }

 private:
  // A manual whose pages are being gathered.
  struct InHand {
    std::size_t plan = 0;
    std::vector<PageRecord> pages;              // as planned; with a reading once it is there
    std::map<std::size_t, PageRecord> earlier;  // readings by an earlier reader, by position in `pages`
    std::size_t awaited = 0;                    // pages that are still to be read
    int asked = 0;                              // pages that were not in the index
    int read = 0;                               // of these, pages that have been read
  };
  struct Assembling {
    std::shared_ptr<InHand> manual;
    std::future<std::optional<PreparedManual>> prepared;
  };
  struct PagePlace {
    std::shared_ptr<InHand> manual;
    std::size_t page = 0;
  };

  Result<void> TakeUp(std::size_t plan);
  // Marks in `filled` the pages that the index gave.
  Result<void> FillFromIndex(InHand& manual, std::vector<bool>& filled);
  // Has the manual, whose pages are all there, searched and made ready for the index on a thread of its own, and stores
  // what is ready, in the order in which manuals became whole.
  Result<void> Assemble(const std::shared_ptr<InHand>& manual);
  // Stores manuals until so many at most are still being searched.
  Result<void> StoreAssembled(std::size_t most_left);
  Result<void> Store(const InHand& manual, PreparedManual prepared);
  void KeepReading(InHand& manual, std::size_t position, PageReading reading, const std::optional<Error>& first_try);
  void KeepFailure(InHand& manual, std::size_t position, Error error);
  void Report(const InHand& manual, Error problem);

  const std::vector<ManualPlan>& plans_;
  const IndexOutline& outline_;
  StoringTools tools_;
  std::deque<std::size_t> plans_ahead_;
  std::deque<PagePlace> queue_;                 // pages that no worker has yet
  std::map<std::size_t, PagePlace> under_way_;  // by the task's id
  std::deque<Assembling> assembling_;
  std::size_t last_id_ = 0;
  StoringResult result_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_MANUAL_FEED_H_
