#include "cli/tube_files.h"

#include "benchleaf/extract/own_rules.h"

#include <utility>

namespace benchleaf {

Result<TubeTable> LoadTubes(const PlaceOptions& options) { return TubeTable::Load(TablesNamed("tubes.tsv", options)); }

Result<TubeFunctions> LoadTubeFunctions(const PlaceOptions& options) {
  auto rules = LoadRules(options.ConfigFolder(), options.library);
  if (!rules) return tl::unexpected<Error>(rules.error());
  return TubeFunctions::Load(TablesNamed("tube-functions.tsv", options), std::move(*rules));
}

}  // namespace benchleaf
