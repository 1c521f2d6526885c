// The bytes of a file, as they lie on disk.

#ifndef BENCHLEAF_RASTER_FILE_BYTES_H_
#define BENCHLEAF_RASTER_FILE_BYTES_H_

#include "benchleaf/core/result.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace benchleaf {

// A file mapped into memory for reading: large TIFF files are read page by page. The file must not be cut short
// meanwhile.
class FileBytes {
 public:
  // `name` is what errors call the file. Fails with kMissing, kUnsupported (no regular file), kEmpty (zero bytes),
  // kTooLarge or kIo.
  static Result<FileBytes> Map(const std::filesystem::path& path, const std::string& name, std::int64_t max_bytes);
  ~FileBytes();
  FileBytes(FileBytes&& other) noexcept;
  FileBytes& operator=(FileBytes&& other) noexcept;
  FileBytes(const FileBytes&) = delete;
  FileBytes& operator=(const FileBytes&) = delete;

  std::string_view view() const { return {static_cast<const char*>(start_), size_}; }

  // Gives back the memory that holds what was looked at so far; whoever looks again has it read from the disk again.
  void Release() const;

 private:
  FileBytes(void* start, std::size_t size) : start_(start), size_(size) {}

  void* start_ = nullptr;
  std::size_t size_ = 0;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_FILE_BYTES_H_
