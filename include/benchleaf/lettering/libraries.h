// The third-party libraries that lettering/ wraps, with the versions that run.

#ifndef BENCHLEAF_LETTERING_LIBRARIES_H_
#define BENCHLEAF_LETTERING_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfLettering();

}  // namespace benchleaf

#endif  // BENCHLEAF_LETTERING_LIBRARIES_H_
