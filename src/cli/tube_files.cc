#include "cli/tube_files.h"

#include <filesystem>
#include <memory>
#include <system_error>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

// benchleaf's table of that name, and the restorer's own in the library's folder, where there is one.
std::vector<std::filesystem::path> TablesNamed(const char* name, const PlaceOptions& options) {
  std::vector<std::filesystem::path> files = {options.ConfigFolder() / name};
  const std::filesystem::path own = std::filesystem::path(options.library) / name;
  std::error_code ignored;
  if (std::filesystem::exists(own, ignored)) files.push_back(own);
  return files;
}

}  // namespace

Result<TubeTable> LoadTubes(const PlaceOptions& options) { return TubeTable::Load(TablesNamed("tubes.tsv", options)); }

Result<TubeFunctions> LoadTubeFunctions(const PlaceOptions& options) {
  auto rules = Rules::Load(options.ConfigFolder());
  if (!rules) return tl::unexpected<Error>(rules.error());
  return TubeFunctions::Load(TablesNamed("tube-functions.tsv", options), std::move(*rules));
}

}  // namespace benchleaf
