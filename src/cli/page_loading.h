// Loads pages of the library to be shown.

#ifndef BENCHLEAF_SRC_CLI_PAGE_LOADING_H_
#define BENCHLEAF_SRC_CLI_PAGE_LOADING_H_

#include "cli/places.h"

#include "benchleaf/core/result.h"
#include "benchleaf/store/index_reader.h"
#include "benchleaf/work/page_viewer.h"

#include <filesystem>
#include <string>

namespace benchleaf {

// What is said of a scan that the index knows and the library folder does not hold.
Error NotInLibrary(const std::filesystem::path& library, const std::string& file);

class PageLoader {
 public:
  explicit PageLoader(const PlaceOptions& places);

  // The part of the scan's page, or why it cannot be shown: as PageViewer::View, and kMissing where the scan is not in
  // the library.
  Result<PageView> Load(const PagePlace& place, const ViewedPart& part);

 private:
  std::filesystem::path library_;
  PageViewer viewer_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PAGE_LOADING_H_
