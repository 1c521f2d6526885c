// The third-party libraries that record/ wraps, with the versions that run.

#ifndef BENCHLEAF_RECORD_LIBRARIES_H_
#define BENCHLEAF_RECORD_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfRecord();

}  // namespace benchleaf

#endif  // BENCHLEAF_RECORD_LIBRARIES_H_
