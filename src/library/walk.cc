#include "library/walk.h"

#include "library/natural_order.h"
#include "library/scan_file.h"

#include <algorithm>
#include <system_error>
#include <utility>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

// Whether `path` is `root` or lies below it. REQUIRES: both are absolute and without links.
bool LiesWithin(const fs::path& path, const fs::path& root) {
  return std::mismatch(root.begin(), root.end(), path.begin(), path.end()).first == root.end();
}

class Walker {
 public:
  explicit Walker(const fs::path& root) : root_(root) {}

  WalkedLibrary Walk() {
    folders_.emplace_back();
    while (!folders_.empty()) {
      const std::string folder = std::move(folders_.back());
      folders_.pop_back();
      List(folder);
    }
    std::sort(walked_.files.begin(), walked_.files.end(), NaturalLess);
    std::sort(walked_.problems.begin(), walked_.problems.end(),
              [](const Error& a, const Error& b) { return NaturalLess(a.source, b.source); });
    return std::move(walked_);
  }

 private:
  void List(const std::string& folder) {
    const std::string before = folder.empty() ? folder : folder + '/';
    std::error_code error;
    fs::directory_iterator entry(root_ / folder, error);
    while (!error && entry != fs::directory_iterator()) {
      const std::string name = entry->path().filename().string();
      if (!name.starts_with('.')) {
        Visit(before + name);
      }
      entry.increment(error);
    }
    if (error) {
      LeaveOut(ErrorCode::kIo, "the folder cannot be listed: " + error.message(), folder);
    }
  }

  void Visit(const std::string& relative) {
    std::error_code error;
    const fs::file_status status = fs::symlink_status(root_ / relative, error);
    switch (status.type()) {
      case fs::file_type::directory:
        folders_.push_back(relative);
        break;
      case fs::file_type::symlink:
        VisitLink(relative);
        break;
      case fs::file_type::regular:
        if (HasScanName(relative)) {
          walked_.files.push_back(relative);
        }
        break;
      case fs::file_type::not_found:  // removed while the folder was listed
        break;
      default:
        if (HasScanName(relative)) {
          LeaveOut(ErrorCode::kUnsupported, "is named like a scan but is no regular file", relative);
        }
    }
  }

  void VisitLink(const std::string& relative) {
    std::error_code error;
    const fs::path target = fs::canonical(root_ / relative, error);
    const bool named_like_scan = HasScanName(relative);
    if (error) {
      if (named_like_scan) {
        LeaveOut(ErrorCode::kMissing, "is a link that leads nowhere: " + error.message(), relative);
      }
      return;
    }
    const fs::file_type type = fs::status(target, error).type();
    if (type != fs::file_type::directory && !named_like_scan) {
      return;
    }
    if (!LiesWithin(target, root_)) {
      LeaveOut(ErrorCode::kUnsupported, "is a link that leads out of the library; copy what it leads to", relative);
    } else if (type == fs::file_type::regular) {
      walked_.files.push_back(relative);
    } else if (type != fs::file_type::directory) {
      LeaveOut(ErrorCode::kUnsupported, "is named like a scan but is no regular file", relative);
    }
  }

  void LeaveOut(ErrorCode code, std::string reason, const std::string& relative) {
    walked_.problems.push_back({code, std::move(reason), relative.empty() ? root_.string() : relative, 0});
  }

  const fs::path& root_;
  std::vector<std::string> folders_;  // still to be listed, relative to the root
  WalkedLibrary walked_;
};

}  // namespace

WalkedLibrary WalkLibrary(const fs::path& root) { return Walker(root).Walk(); }

}  // namespace benchleaf
