#include "benchleaf/report/libraries.h"

#include <utf8proc.h>

namespace benchleaf {
std::vector<LibraryVersion> LibrariesOfReport() { return {{"utf8proc", utf8proc_version()}}; }

}  // namespace benchleaf
