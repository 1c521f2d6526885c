// Brings an index up to date with a library: reads what is new or changed, in worker processes, and stores it.

#ifndef BENCHLEAF_WORK_INDEX_LIBRARY_H_
#define BENCHLEAF_WORK_INDEX_LIBRARY_H_

#include "benchleaf/core/result.h"
#include "benchleaf/library/shard.h"

#include <atomic>
#include <chrono>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf {

// What a worker process may use for one page.
struct WorkerLimits {
  std::chrono::seconds deadline{120};     // wall clock a page, then the worker is killed
  std::int64_t address_space_mib = 4096;  // RLIMIT_AS
  std::chrono::seconds cpu{240};          // RLIMIT_CPU, renewed with each worker
};

struct IndexOptions {
  std::filesystem::path library;
  std::filesystem::path database;  // a folder
  std::filesystem::path config;    // the project's data
  std::filesystem::path program;   // the program that is started as `program worker` for each worker
  int workers = 2;
  // Only the sets of this shard: `database` is then written under its unfinished name (store/merge_shards.h), and
  // renamed when the shard is whole.
  std::optional<ShardPlace> shard;
  bool read_again = false;  // also pages that are in the index, also those that failed
  WorkerLimits limits;
};

// Told of each step as it happens, on the thread that runs IndexLibrary.
class IndexObserver {
 public:
  virtual ~IndexObserver() = default;
  // What the library holds, and what there is to do.
  virtual void Found(int sets, int manuals, int pages_to_read, int pages_known) = 0;
  virtual void PageDone(const std::string& file, int page, bool failed) = 0;
  virtual void ManualStored(const std::string& set, const std::string& manual) = 0;
  // A file or page that is left out, or was read only in the plainer mode.
  virtual void Problem(const Error& error) = 0;
};

struct IndexSummary {
  int sets = 0;             // in the index now
  int manuals = 0;          // in the index now
  int pages = 0;            // in the index now
  int pages_read = 0;       // in this run
  int pages_known = 0;      // taken from the index without reading
  int manuals_removed = 0;  // no longer in the library
  std::vector<Error> problems;
  bool cancelled = false;
};

// Every manual is committed as soon as its pages are read; a run that is stopped loses at most the manual in hand.
// Setting `cancel` stops after killing the workers. Fails as Rules::Load, ScanLibrary and IndexWriter do, and when
// workers cannot work at all (no such program, language data missing); a file or page that cannot be read is a problem
// in the summary, never a failure.
//
// A file that cannot be opened now keeps the pages that the index has of it; only a file that is gone from a folder
// that could be listed takes its pages with it. Of a shard, sets that belong to another one now are removed. Fails with
// kForeign when `database` is to become a shard and is something else, or is there beside its unfinished one. Files and
// pages known to be unreadable are problems of every run.
Result<IndexSummary> IndexLibrary(const IndexOptions& options, IndexObserver& observer,
                                  const std::atomic<bool>& cancel);

// The worker's side: reads jobs from standard input and writes readings to standard output until the input ends.
// Gives the process's exit code.
int RunWorker(const std::filesystem::path& config);

}  // namespace benchleaf

#endif  // BENCHLEAF_WORK_INDEX_LIBRARY_H_
