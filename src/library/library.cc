#include "benchleaf/library/library.h"

#include "library/grouping.h"
#include "library/library_table.h"
#include "library/regular_file.h"
#include "library/scan_file.h"
#include "library/walk.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <set>
#include <system_error>
#include <utility>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kMaxTableBytes = std::size_t{16} << 20U;

// The text of library.csv; empty, with a problem, when it is there and cannot be read.
std::string ReadTable(const fs::path& root, std::vector<Error>& problems) {
  std::error_code error;
  if (fs::symlink_status(root / kLibraryTableName, error).type() == fs::file_type::not_found) {
    return {};
  }
  auto file = RegularFile::Open(root / kLibraryTableName, std::string(kLibraryTableName));
  if (!file) {
    problems.push_back(file.error());
    return {};
  }
  std::string text;
  std::array<std::uint8_t, 1U << 16U> bytes{};
  while (text.size() <= kMaxTableBytes) {
    const Result<std::size_t> size = file->Read(bytes);
    if (!size) {
      problems.push_back(size.error());
      return {};
    }
    text.append(bytes.begin(), bytes.begin() + *size);
    if (*size < bytes.size()) {
      return text;
    }
  }
  problems.push_back({ErrorCode::kTooLarge, "is larger than 16 MiB, so it is not used", file->name(), 0});
  return {};
}

// Tells the table what its paths are.
class PathUses {
 public:
  PathUses(const fs::path& root, const std::vector<ScanFile>& scans, const std::vector<Error>& problems) : root_(root) {
    for (const ScanFile& scan : scans) {
      for (std::size_t slash = scan.path.find('/'); slash != std::string::npos;
           slash = scan.path.find('/', slash + 1)) {
        scans_.insert(scan.path.substr(0, slash));
      }
      scans_.insert(scan.path);
    }
    if (!scans.empty()) {
      scans_.insert(std::string());
    }
    for (const Error& problem : problems) {
      left_out_.insert(problem.source);
    }
  }

  PathUse operator()(const std::string& path) const {
    if (scans_.contains(path)) {
      return PathUse::kScan;
    }
    if (left_out_.contains(path)) {
      return PathUse::kLeftOut;
    }
    std::error_code error;
    return fs::exists(fs::symlink_status(root_ / path, error)) ? PathUse::kNoScan : PathUse::kMissing;
  }

 private:
  const fs::path& root_;
  std::set<std::string> scans_;  // and the folders that hold them
  std::set<std::string> left_out_;
};

Error NoScan(const fs::path& root, const std::vector<Error>& problems) {
  std::string message = "no scan lies in the folder; looked for files that end in " + std::string(kScanNames);
  constexpr std::size_t kMostTold = 20;
  for (std::size_t i = 0; i < std::min(problems.size(), kMostTold); ++i) {
    message += "; left out: " + problems[i].ToString();
  }
  if (problems.size() > kMostTold) {
    message += "; and " + std::to_string(problems.size() - kMostTold) + " more";
  }
  return {ErrorCode::kEmpty, message, root.string(), 0};
}

}  // namespace

Result<ScannedLibrary> ScanLibrary(const fs::path& root) {
  std::error_code error;
  ScannedLibrary library;
  library.root = fs::canonical(root, error);
  if (error || !fs::is_directory(library.root, error)) {
    return Fail(ErrorCode::kMissing, "is no folder; name the folder that holds the scans", root.string());
  }
  WalkedLibrary walked = WalkLibrary(library.root);
  library.problems = std::move(walked.problems);
  std::vector<ScanFile> scans;
  for (const std::string& path : walked.files) {
    Result<ScanFile> scan = InspectScan(library.root, path);
    if (scan) {
      scans.push_back(std::move(*scan));
    } else {
      library.problems.push_back(std::move(scan.error()));
    }
  }
  if (scans.empty()) {
    return tl::unexpected(NoScan(library.root, library.problems));
  }
  const std::string text = ReadTable(library.root, library.problems);
  const LibraryTable table =
      LibraryTable::Parse(text, PathUses(library.root, scans, library.problems), library.problems);
  library.sets = GroupIntoSets(std::move(scans), table, library.root.filename().string());
  return library;
}

}  // namespace benchleaf
