// Pictures of many pages, made by worker processes: a scan that crashes or stalls its renderer costs that page alone.

#ifndef BENCHLEAF_WORK_PICTURE_PAGES_H_
#define BENCHLEAF_WORK_PICTURE_PAGES_H_

#include "benchleaf/binder/page_picture.h"
#include "benchleaf/core/result.h"
#include "benchleaf/work/index_library.h"

#include <atomic>
#include <cstddef>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace benchleaf {

struct PicturingOptions {
  std::filesystem::path library;
  std::filesystem::path config;   // the project's data
  std::filesystem::path program;  // the program that is started as `program worker` for each worker
  int workers = 2;
  WorkerLimits limits;
};

struct PageToPicture {
  std::string file;     // relative to the library
  int page = 1;         // counts from 1
  int orientation = 0;  // degrees clockwise that make the scan upright
  int side = 0;         // px, of the picture's longer side at most
};

class PagePicturer {
 public:
  explicit PagePicturer(const PicturingOptions& options);
  ~PagePicturer();

  // Tells `done` of each page as it is finished, by its position: its files, or why there are none. Fails with
  // kCancelled soon after `cancel` is set, with the error that `done` gives, and when workers cannot work at all.
  using Done = std::function<Result<void>(std::size_t position, Result<binder::PageFiles> files)>;
  Result<void> Run(const std::vector<PageToPicture>& pages, const Done& done, const std::atomic<bool>& cancel);

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_WORK_PICTURE_PAGES_H_
