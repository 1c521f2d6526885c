// The tables of tube types that a command works by.

#ifndef BENCHLEAF_SRC_CLI_TUBE_FILES_H_
#define BENCHLEAF_SRC_CLI_TUBE_FILES_H_

#include "cli/places.h"

#include "benchleaf/core/result.h"
#include "benchleaf/lineup/tube_functions.h"
#include "benchleaf/tubes/tube_table.h"

namespace benchleaf {

// tubes.tsv of benchleaf's data files, and over it the restorer's own tubes.tsv in the library's folder, where there is
// one. Fails as TubeTable::Load does.
Result<TubeTable> LoadTubes(const PlaceOptions& options);

// tube-functions.tsv, the same way. Fails as TubeFunctions::Load and Rules::Load do.
Result<TubeFunctions> LoadTubeFunctions(const PlaceOptions& options);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_TUBE_FILES_H_
