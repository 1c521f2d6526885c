// A file that is whole or not there: written beside its place, then put into it.

#ifndef BENCHLEAF_RASTER_FILE_BESIDE_H_
#define BENCHLEAF_RASTER_FILE_BESIDE_H_

#include "benchleaf/core/result.h"

#include <filesystem>
#include <string_view>
#include <utility>

namespace benchleaf {

// Goes away with its owner unless it takes the target's place.
class FileBeside {
 public:
  // Opens no file yet.
  explicit FileBeside(std::filesystem::path target) : target_(std::move(target)) {}
  ~FileBeside();
  FileBeside(const FileBeside&) = delete;
  FileBeside& operator=(const FileBeside&) = delete;

  // Where the bytes are for now; empty before the first Write.
  const std::filesystem::path& path() const { return part_; }

  // Adds the bytes. Fails with kIo, and says so when the disk is full.
  Result<void> Write(std::string_view bytes);

  // Brings the bytes to the disk and the file to the target's name. Fails with kIo.
  Result<void> TakeTargetsPlace();

 private:
  Result<void> Open();

  std::filesystem::path target_;
  std::filesystem::path part_;
  int file_ = -1;
  bool in_place_ = false;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_FILE_BESIDE_H_
