// library.csv: what the owner says about the scans.

#ifndef BENCHLEAF_LIBRARY_LIBRARY_TABLE_H_
#define BENCHLEAF_LIBRARY_LIBRARY_TABLE_H_

#include "benchleaf/core/result.h"

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

inline constexpr std::string_view kLibraryTableName = "library.csv";

// What is said of one file; empty texts and volume 0 where nothing is.
struct StatedFacts {
  std::string maker;
  std::string model;
  std::string title;
  int volume = 0;

  friend bool operator==(const StatedFacts&, const StatedFacts&) = default;
};

// What a path of the table turned out to be.
enum class PathUse {
  kScan,     // a scan, or a folder that holds one
  kLeftOut,  // a file of which another problem is told already
  kNoScan,   // there, but neither a scan nor a folder that holds one
  kMissing,
};

// The rows of library.csv. A row for a folder holds for all files in it and its subfolders ("." for the whole
// library); where several rows hold for a file, each cell of the longest path that is not empty counts.
class LibraryTable {
 public:
  // `use` tells what a path (relative, '/' between parts, no "." or "..") is; "" is the library itself. Rows and cells
  // that cannot be used are added to `problems`, by line and column; everything else holds.
  static LibraryTable Parse(std::string_view text, const std::function<PathUse(const std::string&)>& use,
                            std::vector<Error>& problems);

  StatedFacts For(const std::string& path) const;

 private:
  std::map<std::string, StatedFacts> rows_;  // by path
};

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_LIBRARY_TABLE_H_
