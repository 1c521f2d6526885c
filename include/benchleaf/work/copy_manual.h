// Searchable copies, made by a worker process: no scan is opened in the process that writes them.

#ifndef BENCHLEAF_WORK_COPY_MANUAL_H_
#define BENCHLEAF_WORK_COPY_MANUAL_H_

#include "benchleaf/core/result.h"
#include "benchleaf/raster/searchable_copy.h"

#include <atomic>
#include <filesystem>
#include <functional>
#include <vector>

namespace benchleaf {

struct CopyOptions {
  std::filesystem::path config;   // the project's data
  std::filesystem::path program;  // the program that is started as `program worker` for each worker
  // Told of each page as it is taken, whether it was copied or left out.
  std::function<void(const PageToCopy& page)> taken = [](const PageToCopy& /*page*/) {};
};

// Writes the copy to `out`, beside it first and then in its place, so that no half file is left. While it is made, a
// plan of it lies beside it, too. Gives the pages that were left out. Fails as SearchableCopier::Finish does, with
// kTimeout or kCrashed, naming the page, when the worker did not come through, with kCancelled soon after `cancel` is
// set, with kIo, and when workers cannot work at all.
Result<std::vector<Error>> CopyManual(const std::vector<PageToCopy>& pages, const std::filesystem::path& out,
                                      const CopyOptions& options, const std::atomic<bool>& cancel);

}  // namespace benchleaf

#endif  // BENCHLEAF_WORK_COPY_MANUAL_H_
