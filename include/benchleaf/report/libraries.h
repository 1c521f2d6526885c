// The third-party libraries that report/ wraps, with the versions that run.

#ifndef BENCHLEAF_REPORT_LIBRARIES_H_
#define BENCHLEAF_REPORT_LIBRARIES_H_

#include "benchleaf/core/library_version.h"

#include <vector>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfReport();

}  // namespace benchleaf

#endif  // BENCHLEAF_REPORT_LIBRARIES_H_
