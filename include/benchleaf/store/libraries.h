// The third-party libraries that store/ wraps, with the versions that run.

#ifndef BENCHLEAF_STORE_LIBRARIES_H_
#define BENCHLEAF_STORE_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfStore();

}  // namespace benchleaf

#endif  // BENCHLEAF_STORE_LIBRARIES_H_
