// The third-party libraries that reading/ wraps, with the versions that run.

#ifndef BENCHLEAF_READING_LIBRARIES_H_
#define BENCHLEAF_READING_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfReading();

}  // namespace benchleaf

#endif  // BENCHLEAF_READING_LIBRARIES_H_
