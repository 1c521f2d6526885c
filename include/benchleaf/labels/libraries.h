// The third-party libraries that labels/ wraps, with the versions that run.

#ifndef BENCHLEAF_LABELS_LIBRARIES_H_
#define BENCHLEAF_LABELS_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfLabels();

}  // namespace benchleaf

#endif  // BENCHLEAF_LABELS_LIBRARIES_H_
