// Which files of a folder may be scans, by their names.

#ifndef BENCHLEAF_LIBRARY_WALK_H_
#define BENCHLEAF_LIBRARY_WALK_H_

#include "benchleaf/core/result.h"

#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf {

struct WalkedLibrary {
  // Regular files named like scans, and links to such files within the library; relative to the root, '/' between
  // parts, the file system's bytes. In natural order, whatever order the file system keeps.
  std::vector<std::string> files;
  std::vector<Error> problems;  // what was left out, in the same order
};

// Walks the folder and its subfolders, opening no file. Names that begin with '.' are passed over in silence. Left
// out with a problem: pipes, sockets and devices named like scans; folders that cannot be listed; links that lead out
// of the library or nowhere. A link to a folder of the library is passed over: its files are found where they lie.
// REQUIRES: `root` is absolute and without links.
WalkedLibrary WalkLibrary(const std::filesystem::path& root);

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_WALK_H_
