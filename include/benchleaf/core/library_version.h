// A third-party library that a folder wraps, and the version that runs.

#ifndef BENCHLEAF_CORE_LIBRARY_VERSION_H_
#define BENCHLEAF_CORE_LIBRARY_VERSION_H_

#include <string>
#include <vector>

namespace benchleaf {

struct LibraryVersion {
  std::string name;
  std::string version;

  friend bool operator==(const LibraryVersion&, const LibraryVersion&) = default;
};

// Those of core.
std::vector<LibraryVersion> LibrariesOfCore();

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_LIBRARY_VERSION_H_
