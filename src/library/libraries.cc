#include "benchleaf/library/libraries.h"

#include <nettle/version.h>

namespace benchleaf {
std::vector<LibraryVersion> LibrariesOfLibrary() {
  return {{"nettle", std::to_string(nettle_version_major()) + "." + std::to_string(nettle_version_minor())}};
}

}  // namespace benchleaf
