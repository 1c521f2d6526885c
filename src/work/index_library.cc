#include "benchleaf/work/index_library.h"

#include "work/count_feed.h"
#include "work/index_outline.h"
#include "work/manual_feed.h"
#include "work/plan.h"
#include "work/rules_fingerprint.h"
#include "work/shard_run.h"
#include "work/worker_pool.h"

#include "benchleaf/extract/own_rules.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/library/library.h"
#include "benchleaf/reading/page_reader.h"
#include "benchleaf/store/index_writer.h"

#include <algorithm>
#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// One call of IndexLibrary: its steps in their order, and what they tell the caller.
class Run {
 public:
  Run(const IndexOptions& options, IndexObserver& observer, const std::atomic<bool>& cancel)
      : options_(options),
        observer_(observer),
        cancel_(cancel),
        pool_({options.program, options.config, options.limits}, std::max(1, options.workers)) {
    if (options_.shard) {
      shard_.emplace(*options_.shard, options_.database);
    }
  }

  Result<IndexSummary> Finish() {
    const Result<void> done = Steps();
    if (!done && done.error().code != ErrorCode::kCancelled) {
      return tl::unexpected(done.error());
    }
    summary_.cancelled = !done;
    if (const Result<void> counted = CountIndex(); !counted) {
      return tl::unexpected(counted.error());
    }
    if (shard_ && done) {
      if (Result<void> whole = shard_->Finish(std::move(writer_), terms_.reading_fingerprint, terms_.rules_fingerprint);
          !whole) {
        return tl::unexpected(std::move(whole.error()));
      }
    }
    GatherProblems();
    return std::move(summary_);
  }

 private:
  Result<void> Steps() {
    return Open().and_then([&] { return CountPages(); }).and_then([&] { return ReadAndStore(); }).and_then([&] {
      return RemoveGone();
    });
  }

  // The library before the index: no index is made for a folder that is no library.
  Result<void> Open() {
    Result<std::shared_ptr<const Rules>> rules = LoadRules(options_.config, options_.library);
    if (!rules) {
      return tl::unexpected(std::move(rules.error()));
    }
    rules_ = std::move(*rules);
    Result<std::string> fingerprint = RulesFingerprint(options_.config, options_.library, RunningProgram());
    if (!fingerprint) {
      return tl::unexpected(std::move(fingerprint.error()));
    }
    Result<std::string> reading = ReadingFingerprint(options_.config);
    if (!reading) {
      return tl::unexpected(std::move(reading.error()));
    }
    terms_ = {std::move(*reading), std::move(*fingerprint), options_.read_again};
    Result<ScannedLibrary> library = ScanLibrary(options_.library);
    if (!library) {
      return tl::unexpected(std::move(library.error()));
    }
    library_ = std::move(*library);
    if (Result<void> opened = OpenWriter(); !opened) {
      return opened;
    }
    Result<IndexOutline> outline = IndexOutline::Read(*writer_, cancel_);
    if (!outline) {
      return tl::unexpected(std::move(outline.error()));
    }
    outline_ = std::move(*outline);
    summary_.pages = outline_.PageTotal();
    return {};
  }

  Result<void> OpenWriter() {
    std::filesystem::path database = options_.database;
    if (shard_) {
      shard_->TakeSets(library_);
      Result<std::filesystem::path> unfinished = shard_->Begin();
      if (!unfinished) {
        return tl::unexpected(std::move(unfinished.error()));
      }
      database = std::move(*unfinished);
    }
    Result<std::unique_ptr<IndexWriter>> writer = IndexWriter::Open(database, rules_);
    if (!writer) {
      return tl::unexpected(std::move(writer.error()));
    }
    writer_ = std::move(*writer);
    return shard_ ? ShardRun::Open(*writer_) : Result<void>();
  }

  Result<void> CountPages() {
    const std::vector<const ScanFile*> files = FilesToCount(library_, outline_);
    CountFeed feed(library_.root, files);
    if (Result<void> counted = pool_.Run(feed, cancel_); !counted) {
      return counted;
    }
    plans_ = PlanManuals(library_, outline_, feed.TakeCounts(), terms_);
    for (ManualPlan& plan : plans_) {
      if (shard_ && shard_->IsElsewhere(plan.head.set, plan.head.manual)) {
        plan.work = ManualWork::kRemove;
        plan.pages.clear();
        plan.failures.clear();
      }
    }
    return {};
  }

  Result<void> ReadAndStore() {
    TellPlan();
    ManualFeed feed(plans_, outline_,
                    {library_.root, *writer_, *rules_, observer_, cancel_, std::max(1, options_.workers)});
    Result<void> read = pool_.Run(feed, cancel_);
    // Also of a run that was stopped: what is stored stays.
    if (Result<void> committed = writer_->Commit(); !committed && read) {
      read = std::move(committed);
    }
    StoringResult result = feed.TakeResult();
    summary_.pages += result.pages_gained;
    summary_.pages_read += result.pages_read;
    summary_.pages_known += result.pages_known;
    reading_problems_ = std::move(result.problems);
    return read;
  }

  void TellPlan() {
    std::size_t manuals = 0;
    for (const ScannedSet& set : library_.sets) {
      manuals += set.manuals.size();
    }
    int to_read = 0;
    int known = 0;
    for (const ManualPlan& plan : plans_) {
      const auto known_here = static_cast<int>(
          std::count_if(plan.pages.begin(), plan.pages.end(), [](const PlannedPage& page) { return page.known; }));
      known += known_here;
      to_read += static_cast<int>(plan.pages.size()) - known_here;
      summary_.pages_known += plan.work == ManualWork::kNothing ? known_here : 0;
    }
    observer_.Found(static_cast<int>(library_.sets.size()), static_cast<int>(manuals), to_read, known);
    for (const Error& problem : ScanProblems()) {
      observer_.Problem(problem);
    }
    for (const ManualPlan& plan : plans_) {
      for (const Error& failure : plan.failures) {
        observer_.Problem(failure);
      }
    }
  }

  // After all else: until then, a manual under a new name can take its pages from the old one.
  Result<void> RemoveGone() {
    for (const ManualPlan& plan : plans_) {
      if (plan.work != ManualWork::kRemove) {
        continue;
      }
      if (cancel_) {
        return Fail(ErrorCode::kCancelled, "stopped");
      }
      if (Result<void> removed = writer_->RemoveManual(plan.head.set, plan.head.manual); !removed) {
        return removed;
      }
      ++summary_.manuals_removed;
      summary_.pages -= static_cast<int>(outline_.Find({plan.head.set, plan.head.manual})->pages.size());
    }
    return {};
  }

  Result<void> CountIndex() {
    const Result<std::vector<ManualName>> manuals = writer_->Manuals();
    if (!manuals) {
      return tl::unexpected(manuals.error());
    }
    std::set<std::string> sets;
    for (const auto& [set, manual] : *manuals) {
      sets.insert(set);
    }
    summary_.sets = static_cast<int>(sets.size());
    summary_.manuals = static_cast<int>(manuals->size());
    return {};
  }

  // What the scan left out, but for files whose failure stands with their manual.
  std::vector<Error> ScanProblems() const {
    // What belongs to no set is told once, not by every shard.
    if (options_.shard && options_.shard->number != 1) {
      return {};
    }
    std::vector<Error> problems = library_.problems;
    std::erase_if(problems, [&](const Error& problem) {
      return std::any_of(plans_.begin(), plans_.end(), [&](const ManualPlan& plan) {
        return std::any_of(plan.failures.begin(), plan.failures.end(),
                           [&](const Error& failure) { return failure.page == 0 && failure.source == problem.source; });
      });
    });
    return problems;
  }

  // In an order that does not depend on the workers.
  void GatherProblems() {
    summary_.problems = ScanProblems();
    const auto add = [&](const std::vector<Error>& more) {
      summary_.problems.insert(summary_.problems.end(), more.begin(), more.end());
    };
    for (std::size_t i = 0; i < plans_.size(); ++i) {
      add(plans_[i].failures);
      std::vector<Error>& pages = reading_problems_[i];
      std::stable_sort(pages.begin(), pages.end(), [](const Error& a, const Error& b) {
        return std::tie(a.source, a.page) < std::tie(b.source, b.page);
      });
      add(pages);
    }
  }

  const IndexOptions& options_;
  IndexObserver& observer_;
  const std::atomic<bool>& cancel_;
  WorkerPool pool_;
  std::optional<ShardRun> shard_;
  PlanTerms terms_;
  std::shared_ptr<const Rules> rules_;
  ScannedLibrary library_;
  std::unique_ptr<IndexWriter> writer_;
  IndexOutline outline_;
  std::vector<ManualPlan> plans_;
  std::map<std::size_t, std::vector<Error>> reading_problems_;
  IndexSummary summary_;
};

}  // namespace

Result<IndexSummary> IndexLibrary(const IndexOptions& options, IndexObserver& observer,
                                  const std::atomic<bool>& cancel) {
  return Run(options, observer, cancel).Finish();
}

}  // namespace benchleaf
