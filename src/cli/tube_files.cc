#include "cli/tube_files.h"

#include <filesystem>
#include <system_error>
#include <vector>

namespace benchleaf {

Result<TubeTable> LoadTubes(const PlaceOptions& options) {
  constexpr const char* kName = "tubes.tsv";
  std::vector<std::filesystem::path> files = {options.ConfigFolder() / kName};
  const std::filesystem::path own = std::filesystem::path(options.library) / kName;
  std::error_code ignored;
  if (std::filesystem::exists(own, ignored)) files.push_back(own);
  return TubeTable::Load(files);
}

}  // namespace benchleaf
