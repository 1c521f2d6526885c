#include "benchleaf/lettering/libraries.h"

#include <blis-serial/blis.h>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfLettering() { return {{"blis", bli_info_get_version_str()}}; }

}  // namespace benchleaf
