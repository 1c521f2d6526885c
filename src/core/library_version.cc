#include "benchleaf/core/library_version.h"

#include <tl/expected.hpp>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfCore() {
  return {{"tl::expected", std::to_string(TL_EXPECTED_VERSION_MAJOR) + "." + std::to_string(TL_EXPECTED_VERSION_MINOR) +
                               "." + std::to_string(TL_EXPECTED_VERSION_PATCH)}};
}

}  // namespace benchleaf
