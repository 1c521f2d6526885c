// The third-party libraries that library/ wraps, with the versions that run.

#ifndef BENCHLEAF_LIBRARY_LIBRARIES_H_
#define BENCHLEAF_LIBRARY_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfLibrary();

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_LIBRARIES_H_
