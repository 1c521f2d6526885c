// Reading files of a folder that anybody may have filled.

#ifndef BENCHLEAF_LIBRARY_REGULAR_FILE_H_
#define BENCHLEAF_LIBRARY_REGULAR_FILE_H_

#include "benchleaf/core/result.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <span>
#include <string>

namespace benchleaf {

// A file open for reading; never a pipe, socket or device, which could block or go on for ever.
class RegularFile {
 public:
  // `name` is what errors call the file. Fails with kMissing, kUnsupported (no regular file) or kIo.
  static Result<RegularFile> Open(const std::filesystem::path& path, std::string name);
  ~RegularFile();
  RegularFile(RegularFile&& other) noexcept;
  RegularFile& operator=(RegularFile&& other) noexcept;
  RegularFile(const RegularFile&) = delete;
  RegularFile& operator=(const RegularFile&) = delete;

  // Fills the buffer as far as the file goes on; gives the bytes read, fewer than asked only at the end. Fails with
  // kIo.
  Result<std::size_t> Read(std::span<std::uint8_t> buffer);

  const std::string& name() const { return name_; }

 private:
  RegularFile(int descriptor, std::string name);

  int descriptor_ = -1;
  std::string name_;
};

// The text of an error number, whatever the locale is set to.
std::string SystemReason(int error_number);

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_REGULAR_FILE_H_
