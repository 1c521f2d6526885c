#include "places/places.h"

namespace benchleaf {

std::filesystem::path SourceFolder() { return BENCHLEAF_SOURCE_DIR; }

std::filesystem::path BuildFolder() { return BENCHLEAF_BINARY_DIR; }

}  // namespace benchleaf
