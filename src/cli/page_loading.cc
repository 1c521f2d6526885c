#include "cli/page_loading.h"

#include <system_error>

namespace benchleaf {

Error NotInLibrary(const std::filesystem::path& library, const std::string& file) {
  Error error;
  error.code = ErrorCode::kMissing;
  error.message = "the scan is not in the library folder '" + library.string() + "'; --library names another";
  error.source = file;
  return error;
}

PageLoader::PageLoader(const PlaceOptions& places)
    : library_(places.library), viewer_(ProgramPath(), places.ConfigFolder()) {}

Result<PageView> PageLoader::Load(const PagePlace& place, const ViewedPart& part) {
  const std::filesystem::path path = library_ / place.file;
  std::error_code failed;
  if (!std::filesystem::exists(path, failed)) {
    return tl::unexpected(NotInLibrary(library_, place.file));
  }
  return viewer_.View(path, place.file, place.page, part);
}

}  // namespace benchleaf
