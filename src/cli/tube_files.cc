#include "cli/tube_files.h"

#include <utility>

namespace benchleaf {

Result<TubeTable> LoadTubes(const PlaceOptions& options) { return TubeTable::Load(TablesNamed("tubes.tsv", options)); }

Result<TubeFunctions> LoadTubeFunctions(const PlaceOptions& options) {
  auto rules = LoadRules(options);
  if (!rules) return tl::unexpected<Error>(rules.error());
  return TubeFunctions::Load(TablesNamed("tube-functions.tsv", options), std::move(*rules));
}

}  // namespace benchleaf
