// A copy of scans as one PDF in which any reader of PDF finds words.

#ifndef BENCHLEAF_RASTER_SEARCHABLE_COPY_H_
#define BENCHLEAF_RASTER_SEARCHABLE_COPY_H_

#include "benchleaf/core/result.h"
#include "benchleaf/core/scan_points.h"

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace benchleaf {

// A word and the slanted box that it stands in: corners in fractions of the page as scanned.
struct LaidWord {
  std::string text;     // UTF-8
  FractionPoint start;  // of the baseline
  FractionPoint end;    // of the baseline
  FractionPoint above;  // the start, at the height of the letters' tops

  friend bool operator==(const LaidWord&, const LaidWord&) = default;
};

struct PageToCopy {
  std::filesystem::path path;  // where the file lies
  std::string name;            // what errors call it
  int page = 1;                // of the file, from 1
  double dpi = 0;              // as far as it is known, for files that do not say it; 0 where it is not
  std::vector<LaidWord> words;

  friend bool operator==(const PageToCopy&, const PageToCopy&) = default;
};

struct SearchableCopy {
  std::string pdf;
  std::vector<Error> left_out;  // pages that could not be copied

  friend bool operator==(const SearchableCopy&, const SearchableCopy&) = default;
};

// Makes one copy, page by page: each as it was scanned, with its words as text that is not drawn (ISO 32000-1, 9.3.6,
// mode 3). Pages of a PDF keep their content, pictures and annotations byte for byte; where all are the pages of one
// PDF, so do its outline and the rest. Pictures become pages of their own size, coded as PackForPdf tells.
class SearchableCopier {
 public:
  // Opens no file yet.
  explicit SearchableCopier(std::vector<PageToCopy> pages);
  ~SearchableCopier();
  SearchableCopier(const SearchableCopier&) = delete;
  SearchableCopier& operator=(const SearchableCopier&) = delete;

  // Takes the next pages, until `count` of them are copied or left out.
  void CopyPages(std::size_t count);

  // Takes the rest, and gives the whole. A page that cannot be copied is left out. Fails when none can, with the reason
  // of the first. To be called once.
  Result<SearchableCopy> Finish();

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_SEARCHABLE_COPY_H_
