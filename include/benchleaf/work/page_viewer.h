// Pages of scans as pictures, loaded by a worker process: no scan is opened in the process that shows it.

#ifndef BENCHLEAF_WORK_PAGE_VIEWER_H_
#define BENCHLEAF_WORK_PAGE_VIEWER_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"

#include <filesystem>
#include <memory>
#include <string>

namespace benchleaf {

// What is wanted of a page.
struct ViewedPart {
  Box part;                 // px of the page as PageView measures it; empty: all of it
  int longest_side_px = 0;  // of the picture; the part is made smaller to fit

  friend bool operator==(const ViewedPart&, const ViewedPart&) = default;
};

struct PageView {
  int page_width = 0;  // px of the whole page as scanned; a longer side than 12,000 px is brought down to that
  int page_height = 0;
  ColorImage image;  // the part

  friend bool operator==(const PageView& a, const PageView& b) {
    return a.page_width == b.page_width && a.page_height == b.page_height && a.image.width == b.image.width &&
           a.image.height == b.image.height && a.image.pixels == b.image.pixels;
  }
};

// Keeps its worker, and in it the page shown last, between calls. To be used on one thread.
class PageViewer {
 public:
  // `program` is started as `program worker --config CONFIG`.
  PageViewer(const std::filesystem::path& program, const std::filesystem::path& config);
  ~PageViewer();
  PageViewer(const PageViewer&) = delete;
  PageViewer& operator=(const PageViewer&) = delete;

  // `path` is where the file lies, `name` what errors call it; `page` counts from 1; a longest side of 1 to 4096 px.
  // Fails as OpenScan and PageSource::LoadColor do, with kTimeout or kCrashed when the worker did not come through, and
  // as IndexLibrary does when workers cannot work at all.
  Result<PageView> View(const std::filesystem::path& path, const std::string& name, int page, const ViewedPart& view);

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_WORK_PAGE_VIEWER_H_
