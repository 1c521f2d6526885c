// The third-party libraries that raster/ wraps, with the versions that run.

#ifndef BENCHLEAF_RASTER_LIBRARIES_H_
#define BENCHLEAF_RASTER_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfRaster();

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_LIBRARIES_H_
