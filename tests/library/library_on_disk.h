// A folder that a test fills with files and that goes away with it.

#ifndef BENCHLEAF_TESTS_LIBRARY_LIBRARY_ON_DISK_H_
#define BENCHLEAF_TESTS_LIBRARY_LIBRARY_ON_DISK_H_

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>
#include <system_error>

namespace benchleaf {

class LibraryOnDisk {
 public:
  // The folder is called `name`, within a temporary folder of its own.
  explicit LibraryOnDisk(const std::string& name = "scans") {
    std::string pattern = (std::filesystem::temp_directory_path() / "benchleaf-library-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) {
      ADD_FAILURE() << "no temporary folder can be made";
    }
    outside_ = std::filesystem::canonical(pattern);
    root_ = outside_ / name;
    std::filesystem::create_directories(root_);
  }
  ~LibraryOnDisk() {
    std::error_code error;
    std::filesystem::remove_all(outside_, error);
  }
  LibraryOnDisk(const LibraryOnDisk&) = delete;
  LibraryOnDisk& operator=(const LibraryOnDisk&) = delete;

  const std::filesystem::path& root() const { return root_; }
  // The folder in which root() lies.
  const std::filesystem::path& outside() const { return outside_; }

  void Write(const std::string& path, std::string_view bytes) const {
    std::filesystem::create_directories((root_ / path).parent_path());
    std::ofstream(root_ / path, std::ios::binary) << bytes;
  }

  // Writes a file with the first bytes of the format that its name promises.
  void WriteScan(const std::string& path) const { Write(path, std::string(HeadFor(path)) + path); }

 private:
  static std::string_view HeadFor(std::string_view path) {
    if (path.ends_with(".png")) {
      return "\x89PNG\r\n\x1A\n";
    }
    if (path.ends_with(".jpg") || path.ends_with(".jpeg")) {
      return "\xFF\xD8\xFF\xE0";
    }
    if (path.ends_with(".tif") || path.ends_with(".tiff")) {
      return {"II*\0", 4};
    }
    return "%PDF-1.4\n";
  }

  std::filesystem::path outside_;
  std::filesystem::path root_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_LIBRARY_LIBRARY_ON_DISK_H_
