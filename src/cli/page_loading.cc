#include "cli/page_loading.h"

#include <system_error>

namespace benchleaf {

PageLoader::PageLoader(const PlaceOptions& places)
    : library_(places.library), viewer_(ProgramPath(), places.ConfigFolder()) {}

Result<PageView> PageLoader::Load(const PagePlace& place, const ViewedPart& part) {
  const std::filesystem::path path = library_ / place.file;
  std::error_code failed;
  if (!std::filesystem::exists(path, failed)) {
    return Fail(ErrorCode::kMissing,
                "the scan is not in the library folder '" + library_.string() + "'; --library names another",
                place.file);
  }
  return viewer_.View(path, place.file, place.page, part);
}

}  // namespace benchleaf
