#include "benchleaf/work/libraries.h"

#include <seccomp.h>

namespace benchleaf {
namespace {

std::string Version() {
  const scmp_version* version = ::seccomp_version();
  return std::to_string(version->major) + "." + std::to_string(version->minor) + "." + std::to_string(version->micro);
}

}  // namespace

std::vector<LibraryVersion> LibrariesOfWork() { return {{"libseccomp", Version()}}; }

}  // namespace benchleaf
