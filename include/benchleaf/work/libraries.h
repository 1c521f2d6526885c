// The third-party libraries that work/ wraps, with the versions that run.

#ifndef BENCHLEAF_WORK_LIBRARIES_H_
#define BENCHLEAF_WORK_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfWork();

}  // namespace benchleaf

#endif  // BENCHLEAF_WORK_LIBRARIES_H_
