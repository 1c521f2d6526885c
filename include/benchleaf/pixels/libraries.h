// The third-party libraries that pixels/ wraps, with the versions that run.

#ifndef BENCHLEAF_PIXELS_LIBRARIES_H_
#define BENCHLEAF_PIXELS_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfPixels();

}  // namespace benchleaf

#endif  // BENCHLEAF_PIXELS_LIBRARIES_H_
